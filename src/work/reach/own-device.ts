import { done, problem, type Result, refused } from '../../core/problem.ts';
import type { Context } from '../context.ts';

/** What a device does for itself is done on one, not at the workshop's own computer. */
export const ownDevice = ({ asker }: Context): Result<{ readonly id: string; readonly name: string }> =>
  asker?.device ? done(asker.device) : refused(problem('only-on-a-device', 'device'));
