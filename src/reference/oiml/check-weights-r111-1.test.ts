import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { checkWeightSources, checkWeights } from './check-weights-r111-1.ts';

it('has 18 nominal values, each class coarser than the one before', () => {
  expect(checkWeights).toHaveLength(18);
  expectSoundTable(checkWeights, checkWeightSources);
  for (const row of checkWeights) {
    expect(row.m1ErrorMilligrams).toBeLessThan(row.m2ErrorMilligrams);
    expect(row.m2ErrorMilligrams).toBeLessThan(row.m3ErrorMilligrams ?? Number.POSITIVE_INFINITY);
  }
});
