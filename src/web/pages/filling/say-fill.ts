import { fillingWords } from '../../../words/index.ts';
import type { Run } from './run.ts';

/** The verdict of a tin; of one too light, what it lies below. */
export const sayFill = ({ verdict, lightBy }: Pick<Run['weights'][number], 'verdict' | 'lightBy'>): string =>
  lightBy === null
    ? fillingWords.verdicts[verdict]
    : `${fillingWords.verdicts[verdict]}, ${fillingWords.lightBy[lightBy]}`;
