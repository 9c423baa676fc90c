import { z } from 'zod';
import type { Exact } from '../core/quantity/index.ts';

/** One metric ton: nothing that two people weigh by hand comes near it (common practice, no source). */
const LARGEST_GRAMS = 1_000_000;
/** A tenth of a microgram: finer than any scale of a workshop shows (common practice, no source). */
const SMALLEST_GRAMS = 0.0000001;
/** Osmium, the densest element, has 22.6 g/ml; a foam lighter than 0.01 g/ml does not stand in a tin. */
const DENSEST = 23;
const LIGHTEST = 0.01;

export const gramsAboveZero = (meaning: string) =>
  z.number().min(SMALLEST_GRAMS).max(LARGEST_GRAMS).describe(meaning);

export const gramsFromZero = (meaning: string) => z.number().min(0).max(LARGEST_GRAMS).describe(meaning);

export const densityGramsPerMl = (meaning: string) => z.number().min(LIGHTEST).max(DENSEST).describe(meaning);

export const accuracyClass = () =>
  z.enum(['I', 'II', 'III', 'IIII']).describe('Accuracy class on the scale’s plate');

/** The border of the exact numbers: a JSON number, the nearest to the decimal. */
export const asNumber = (value: Exact): number => value.toNumber();
