import { expect, it } from 'vitest';
import { expectSoundTable, isCasNumber } from '../../../test/tables/expect-sound-table.ts';
import {
  bodyParts,
  productTypes,
  restrictedSubstanceSources,
  restrictedSubstances,
  restrictionConditions,
} from './restricted-substances-2025.ts';

const rules = restrictedSubstances.flatMap((row) => row.rules);

it('has 128 rows and 422 rules with sources', () => {
  expect(restrictedSubstances).toHaveLength(128);
  expect(rules).toHaveLength(422);
  expectSoundTable(restrictedSubstances, restrictedSubstanceSources);
  expectSoundTable(rules, restrictedSubstanceSources);
  expect(restrictedSubstances.flatMap(({ cas }) => cas).filter((cas) => !isCasNumber(cas))).toEqual([]);
});

it('uses only words of its vocabulary', () => {
  const words = (table: readonly { id: string }[]): Set<string> => new Set(table.map(({ id }) => id));
  const types = words(productTypes);
  const used = rules.flatMap((rule) => [rule.productType ?? [], rule.exceptProductTypes ?? []].flat());
  expect(used.filter((type) => !types.has(type))).toEqual([]);
  expect(rules.flatMap((rule) => rule.bodyPart ?? []).filter((part) => !words(bodyParts).has(part))).toEqual([]);
  const conditions = words(restrictionConditions);
  expect(rules.flatMap((rule) => rule.onlyIf ?? []).filter((word) => !conditions.has(word))).toEqual([]);
});

it('gives a figure to each maximum, or says aloud that it is not known; none to a prohibition', () => {
  for (const rule of rules) {
    if (rule.quantity === 'prohibited') expect(rule.value).toBeUndefined();
    else expect(rule.value === null || (rule.value !== undefined && rule.value > 0)).toBe(true);
  }
});

it('keeps ages and dates in order', () => {
  for (const rule of rules) {
    if (rule.minAgeMonths !== undefined && rule.maxAgeMonths !== undefined) {
      expect(rule.minAgeMonths).toBeLessThan(rule.maxAgeMonths);
    }
    if (rule.until !== undefined) expect(rule.from !== undefined && rule.from < rule.until).toBe(true);
  }
});

it('gives every prohibited row a prohibition, and every naming-only row no rule', () => {
  for (const row of restrictedSubstances) {
    if (row.kind === 'naming-only') expect(row.rules).toEqual([]);
    if (row.kind === 'prohibited') {
      expect(row.rules.some(({ quantity }) => quantity === 'prohibited')).toBe(true);
    }
  }
});

it('has the four limits of methyl eugenol from the SCCNFP opinion of 2000 (Annex III, entry 102)', () => {
  const row = restrictedSubstances.find(({ id }) => id === 'methyl-eugenol');
  const value = (id: string): number | null | undefined =>
    row?.rules.find((rule) => rule.id === `methyl-eugenol-eu-${id}`)?.value;
  expect(['fine-fragrance', 'eau-de-toilette', 'fragrance-cream', 'leave-on', 'rinse-off'].map(value)).toEqual([
    0.01, 0.004, 0.002, 0.0002, 0.001,
  ]);
});
