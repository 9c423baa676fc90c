import { type Exact, type ExactInput, exact, GRAMS_PER_OUNCE } from '../quantity/index.ts';

/** Units that a scale may show; those of jewellers too, since small scales cycle through them at one button. */
export type MassUnit = 'mg' | 'g' | 'kg' | 'ct' | 'grain' | 'dwt' | 'oz' | 'ozt' | 'lb' | 'tonne' | 'ton';

/**
 * Grams in one of each unit, exactly.
 *
 * Sources: SI prefixes; international pound agreement of 1959 (1 lb = 453.59237 g, 1 oz = 1/16 lb, 1 grain = 1/7000 lb,
 * 1 short ton = 2000 lb); troy ounce = 480 grains, pennyweight = 24 grains; metric carat = 0.2 g (CGPM 1907). From memory.
 */
export const GRAMS_PER_UNIT: Readonly<Record<MassUnit, Exact>> = {
  mg: exact('0.001'),
  g: exact(1),
  kg: exact(1000),
  ct: exact('0.2'),
  grain: exact('0.06479891'),
  dwt: exact('1.55517384'),
  oz: GRAMS_PER_OUNCE,
  ozt: exact('31.1034768'),
  lb: GRAMS_PER_OUNCE.times(16),
  tonne: exact(1_000_000),
  ton: GRAMS_PER_OUNCE.times(32_000),
};

/** A reading in any of these units as grams, exactly: every factor has an end, so that nothing is rounded. */
export const gramsOfUnit = (value: ExactInput, unit: MassUnit): Exact =>
  exact(value).times(GRAMS_PER_UNIT[unit]);
