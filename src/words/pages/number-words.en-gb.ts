import { sayDecimal } from '../say-figure.ts';

const WORDS = [
  'No',
  'One',
  'Two',
  'Three',
  'Four',
  'Five',
  'Six',
  'Seven',
  'Eight',
  'Nine',
  'Ten',
  'Eleven',
  'Twelve',
] as const;

/** A count at the start of a sentence: in words up to twelve, then in digits (common practice, no source). */
export const numberWord = (count: number): string => WORDS[count] ?? sayDecimal(count);

export const countedWord = (count: number, one: string, many: string): string =>
  `${numberWord(count)} ${count === 1 ? one : many}`;
