import { expect, it } from 'vitest';
import { expectBandsToMeet, expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import {
  measuringErrorRules,
  tolerableErrorRoundings,
  tolerableErrorSources,
  tolerableErrors,
} from './tolerable-errors-76-211.ts';

it('has the nine bands of Directive 76/211/EEC, the last one without an end', () => {
  expect(tolerableErrors).toHaveLength(9);
  expectSoundTable(tolerableErrors, tolerableErrorSources);
  expectBandsToMeet(tolerableErrors.map((row) => row.nominalGramsOrMl));
  expect(tolerableErrors[0]?.nominalGramsOrMl.notBelow).toBe(5);
  expect(tolerableErrors.at(-1)?.nominalGramsOrMl.upTo).toBeNull();
});

it('is continuous at every band edge, as the directive draws it', () => {
  const errorAt = (row: (typeof tolerableErrors)[number], nominal: number): number =>
    row.tolerableErrorGramsOrMl ?? (nominal * (row.tolerableErrorPercent ?? Number.NaN)) / 100;
  for (const [index, row] of tolerableErrors.entries()) {
    const next = tolerableErrors[index + 1];
    const edge = row.nominalGramsOrMl.upTo;
    if (next !== undefined && edge !== null) expect(errorAt(row, edge)).toBeCloseTo(errorAt(next, edge), 9);
  }
});

it('gives each band a percentage or a fixed value, never both', () => {
  for (const row of tolerableErrors) {
    expect((row.tolerableErrorPercent === undefined) !== (row.tolerableErrorGramsOrMl === undefined)).toBe(true);
  }
});

it('keeps the roundings and the rule of one fifth', () => {
  expectSoundTable(tolerableErrorRoundings, tolerableErrorSources);
  expectSoundTable(measuringErrorRules, tolerableErrorSources);
  expect(tolerableErrorRoundings.map(({ id }) => id)).toContain('rounding-gb-eu');
  expect(measuringErrorRules[0]?.fractionOfTolerableError).toBe(0.2);
});
