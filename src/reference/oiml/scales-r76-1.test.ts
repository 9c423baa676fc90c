import { expect, it } from 'vitest';
import { expectBandsToMeet, expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { accuracyClasses, initialErrors, inServiceErrorRules, scaleSources } from './scales-r76-1.ts';

it('has four classes with three bands of permissible error each', () => {
  expect(accuracyClasses).toHaveLength(6);
  expect(initialErrors).toHaveLength(12);
  for (const table of [accuracyClasses, initialErrors, inServiceErrorRules]) expectSoundTable(table, scaleSources);
  for (const accuracyClass of ['I', 'II', 'III', 'IIII'] as const) {
    const bands = initialErrors.filter((row) => row.accuracyClass === accuracyClass);
    expectBandsToMeet(bands.map((row) => row.loadInE));
    expect(bands.map((row) => row.permissibleErrorInE)).toEqual([0.5, 1, 1.5]);
    expect(bands.map((row) => row.includesZero)).toEqual([true, false, false]);
  }
});

it('doubles the error in service', () => {
  expect(inServiceErrorRules.find(({ id }) => id === 'in-service-factor')?.factor).toBe(2);
});
