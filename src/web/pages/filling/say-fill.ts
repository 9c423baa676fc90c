import { exact, roundToStep, toText } from '../../../core/quantity/index.ts';
import { fillingWords, lightWords } from '../../../words/index.ts';
import type { Weight } from './run.ts';

type Said = Pick<Weight, 'verdict' | 'lightBy' | 'gramsToAdd'>;

/** Taken up to a hundredth of a gram: what is added must suffice. */
const upBrief = (grams: string): string => toText(roundToStep(exact(grams), '0.01', 'up'));

/** The verdict of a tin in one line; of one too light, by how much and what it lies below. */
export function sayFill({ verdict, lightBy, gramsToAdd }: Said): string {
  if (verdict !== 'too-light' || lightBy === null) return fillingWords.verdicts[verdict];
  const by = exact(gramsToAdd).gt(0)
    ? lightWords.lightBy(upBrief(gramsToAdd))
    : fillingWords.verdicts[verdict];
  return `${by}, ${fillingWords.lightBy[lightBy]}`;
}
