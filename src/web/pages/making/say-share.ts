import { sayNumber, stepWords } from '../../../words/index.ts';

const { air: words } = stepWords;

/** Never 0 nor 100: no model is as sure as that. */
export function sayShare(share: number): string {
  if (share > 0.999) return words.above('99.9');
  return share < 0.001 ? words.below('0.1') : sayNumber(share * 100, share > 0.99 || share < 0.1 ? 1 : 0);
}
