import type { Problem } from '../../core/problem.ts';
import { openProblem } from '../../storage/index.ts';
import type { Context } from '../context.ts';

/** What the disk or the file did to us while a use-case ran, as a problem; undefined for a mistake of our own. */
export const problemOfFailure = ({ storage }: Context, error: unknown): Problem | undefined =>
  openProblem(error, storage.file);
