import { expect, it } from 'vitest';
import { expectSoundTable, isCasNumber } from '../../../test/tables/expect-sound-table.ts';
import { fragranceAllergens } from './fragrance-allergens-2023-1545.ts';
import { inciCasTraps, inciNames, inciRules, inciSources } from './inci-names-2025-1175.ts';

it('has 178 names with sound rows, rules and shared numbers', () => {
  expect(inciNames).toHaveLength(178);
  expect(inciRules).toHaveLength(11);
  for (const table of [inciNames, inciRules, inciCasTraps]) expectSoundTable(table, inciSources);
  expect(inciNames.flatMap(({ cas }) => cas).filter((cas) => !isCasNumber(cas))).toEqual([]);
});

it('refers to allergen entries and rows that exist', () => {
  const entries = new Set(fragranceAllergens.map(({ id }) => id));
  expect(inciNames.flatMap((row) => row.allergenEntryId ?? []).filter((id) => !entries.has(id))).toEqual([]);
  const names = new Set(inciNames.map(({ id }) => id));
  expect(inciCasTraps.flatMap((trap) => trap.inciNameIds).filter((id) => !names.has(id))).toEqual([]);
});
