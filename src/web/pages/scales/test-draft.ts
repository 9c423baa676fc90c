import { exact, readDecimal } from '../../../core/quantity/index.ts';
import type { TestReading } from '../../../core/weighing/index.ts';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Scale } from './scale.ts';

/** Kept on the tablet: ten weighings take minutes, and a tablet sleeps, or is switched off, in between. */
export const NOTHING = { weight: '', isBegun: '', begunAt: '', readings: '', typed: '' };
export type TestDraft = typeof NOTHING;

export function mayBegin({ weight }: TestDraft): boolean {
  const read = readDecimal(weight, 'weightGrams');
  return read.ok && read.value.gt(0);
}

/** From here on the weight is a figure to count with: typed as pages write it, it has spaces between thousands. */
export const beginTest = (draft: TestDraft, begunAt: string): TestDraft => ({
  ...draft,
  weight: typedDecimal(draft.weight),
  isBegun: 'yes',
  begunAt,
});

export const readingsOf = ({ readings }: TestDraft): string[] => (readings === '' ? [] : readings.split(' '));

/** As the scale showed it: 20.000 and not 20, where it shows milligrams. */
export function asShown(grams: string, { readabilityGrams }: Pick<Scale, 'readabilityGrams'>): string {
  const value = exact(grams);
  return value.toFixed(Math.max(value.decimalPlaces(), exact(readabilityGrams).decimalPlaces()));
}

/** A reading among those before it, to be asked about. */
export const readingOf = (
  scale: Pick<Scale, 'readabilityGrams' | 'capacityGrams'>,
  draft: TestDraft,
  grams: string,
): TestReading => ({
  grams,
  // A test that was begun by an earlier edition of the page kept its weight as typed.
  weightGrams: typedDecimal(draft.weight),
  readabilityGrams: scale.readabilityGrams,
  capacityGrams: scale.capacityGrams,
  earlier: readingsOf(draft),
});
