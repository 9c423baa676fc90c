import { expect, it } from 'vitest';
import type { Scale } from '../workshop/workshop.ts';
import { scaleToUse } from './scale-to-use.ts';

const check = { isDue: true, lastAt: null, isGood: null, weightGrams: '100', toleranceGrams: '0' };
const limit = { limitGrams: '0.01', limitBy: 'readability', isWeightRough: false } as const;
const scale = (id: string, capacityGrams: string, readabilityGrams: string, isHeld = false): Scale => ({
  id,
  name: id,
  capacityGrams,
  readabilityGrams,
  repeatabilityGrams: null,
  accuracyClass: null,
  verificationIntervalGrams: null,
  checkWeightGrams: null,
  checkToleranceGrams: null,
  repeatability: null,
  check: { ...check, ...limit, isHeld },
  version: 1,
});
const bench = scale('bench', '5000', '1');
const middle = scale('middle', '2000', '0.1');
const held = scale('small', '200', '0.01', true);

it.each([
  [middle, '100', 'middle'],
  [held, '100', 'middle'],
  [held, '2000', 'middle'],
  [held, '2000.1', 'bench'],
])('case %#: the planned scale, or the finest that may weigh', (planned, grams, id) => {
  expect(scaleToUse(planned, [bench, middle, held], grams)?.id).toBe(id);
});

it('is none where none is planned, or none that may weigh holds it', () => {
  expect(scaleToUse(null, [bench, middle], '10')).toBeNull();
  expect(scaleToUse(held, [held, bench], '5000.1')).toBeNull();
});
