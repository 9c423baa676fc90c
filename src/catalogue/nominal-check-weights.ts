import { checkWeights } from '../reference/index.ts';

/** Nominal masses of weights that are made, in grams. */
export const nominalCheckWeights: readonly number[] = checkWeights.map(({ nominalGrams }) => nominalGrams);
