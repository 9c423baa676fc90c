import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import {
  aggregateExposures,
  exposureFormulas,
  exposureMappings,
  exposureParameters,
  exposureProductTypes,
  exposureSources,
} from './exposure-notes-12.ts';

it('has 18 product types, 12 mappings, 21 parameters, 7 formulas and the aggregate: 59 rows', () => {
  const tables = [
    exposureProductTypes,
    exposureMappings,
    exposureParameters,
    exposureFormulas,
    aggregateExposures,
  ];
  expect(tables.map((table) => table.length)).toEqual([18, 12, 21, 7, 1]);
  for (const table of tables) expectSoundTable(table, exposureSources);
});

it('maps every workshop product to a type that the table has', () => {
  const types = new Set(exposureProductTypes.map(({ id }) => id));
  expect(exposureMappings.map(({ productType }) => productType).filter((type) => !types.has(type))).toEqual([]);
});

it('keeps retention in step: amount x retention is the exposure, to the tolerance of the worked examples', () => {
  for (const row of exposureProductTypes) {
    expect(Math.abs(row.amountGramsPerDay * row.retentionFraction - row.exposureGramsPerDay)).toBeLessThan(0.006);
  }
});

it('adds up to the aggregate that the Notes print: 17.4 g and 269 mg/kg a day, within half a per cent', () => {
  const [aggregate] = aggregateExposures;
  const parts = exposureProductTypes.filter(({ id }) => aggregate?.parts.includes(id));
  const grams = parts.reduce((sum, row) => sum + row.exposureGramsPerDay, 0);
  const relative = parts.reduce((sum, row) => sum + row.relativeExposureMgPerKgDay, 0);
  expect(parts).toHaveLength(aggregate?.parts.length ?? -1);
  expect(Math.abs(grams / 17.4 - 1)).toBeLessThan(0.005);
  expect(Math.abs(relative / 269 - 1)).toBeLessThan(0.005);
});
