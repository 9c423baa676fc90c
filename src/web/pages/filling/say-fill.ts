import { exact } from '../../../core/quantity/index.ts';
import { fillingWords, lightWords } from '../../../words/index.ts';
import type { Weight } from './run.ts';

type Said = Pick<Weight, 'verdict' | 'lightBy' | 'gramsToAdd'>;

/** The verdict of a tin in one line; of one too light, by how much and what it lies below. */
export function sayFill({ verdict, lightBy, gramsToAdd }: Said): string {
  if (verdict !== 'too-light' || lightBy === null) return fillingWords.verdicts[verdict];
  const by = exact(gramsToAdd).gt(0) ? lightWords.lightBy(gramsToAdd) : fillingWords.verdicts[verdict];
  return `${by}, ${fillingWords.lightBy[lightBy]}`;
}
