import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { smallestWeightRules, smallestWeightSources } from './smallest-weight-41.ts';

it('has four rules, whose examples follow 2 max(s, 0.41 d) / r', () => {
  expect(smallestWeightRules).toHaveLength(4);
  expectSoundTable(smallestWeightRules, smallestWeightSources);
  const examples = smallestWeightRules.flatMap((row) => row.examples ?? []);
  expect(examples).toHaveLength(21);
  for (const { readabilityGrams = 0, repeatabilityGrams = 0, relativeTolerance = 0.001, ...found } of examples) {
    const expected = (2 * Math.max(repeatabilityGrams, 0.41 * readabilityGrams)) / relativeTolerance;
    expect(found.smallestWeightGrams).toBeCloseTo(expected, 9);
  }
});
