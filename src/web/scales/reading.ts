import type { MassUnit } from '../../core/weighing/index.ts';

/** What a scale told, in grams as exact decimal text. */
export interface ScaleReading {
  /** null: it tells no weight, or in a unit that has no fixed mass. */
  readonly grams: string | null;
  readonly isStable: boolean;
  readonly trouble: ReadingTrouble | null;
  /** As it was told, where that was not grams. */
  readonly told: { readonly value: string; readonly unit: MassUnit } | null;
}

export type ReadingTrouble =
  | 'fault'
  | 'over-limit'
  | 'wants-calibration'
  | 'wants-zero'
  | 'unit-unknown'
  | 'not-understood';

export const noReading = (trouble: ReadingTrouble): ScaleReading => ({
  grams: null,
  isStable: false,
  trouble,
  told: null,
});
