import { expect, it } from 'vitest';
import { expectSoundTable, isCasNumber } from '../../../test/tables/expect-sound-table.ts';
import { fragranceAllergens } from '../eu/fragrance-allergens-2023-1545.ts';
import { inciNames } from '../eu/inci-names-2025-1175.ts';
import { essentialOilSources } from './essential-oil-sources-2026.ts';
import { ambiguousOilAliases, essentialOils } from './essential-oils-2026.ts';

const constituents = essentialOils.flatMap((oil) => oil.constituents);

it('has 52 oils with 395 constituents, 111 of which do not rest on memory', () => {
  expect(essentialOils).toHaveLength(52);
  expect(constituents).toHaveLength(395);
  expect(constituents.filter(({ confidence }) => confidence !== 'memory')).toHaveLength(111);
  expectSoundTable(essentialOils, essentialOilSources);
  expectSoundTable(ambiguousOilAliases, essentialOilSources);
});

it('names a known source for every constituent', () => {
  const known = new Set(essentialOilSources.map(({ id }) => id));
  const used = constituents.flatMap((row) => [row.source, ...(row.alsoSources ?? [])]);
  expect(used.filter((source) => !known.has(source))).toEqual([]);
});

it('keeps least <= typical <= most, and never more than the whole oil', () => {
  for (const { name, leastPercent, typicalPercent, mostPercent } of constituents) {
    const range = [leastPercent ?? 0, typicalPercent, mostPercent ?? 100];
    expect([name, ...range]).toEqual([name, ...range.toSorted((a, b) => a - b)]);
  }
  for (const oil of essentialOils) {
    const typical = oil.constituents.reduce((sum, row) => sum + row.typicalPercent, 0);
    expect(typical).toBeLessThanOrEqual(101);
  }
});

it('has check digits in order and refers to entries and names that exist', () => {
  const numbers = [...essentialOils.flatMap(({ cas }) => cas), ...constituents.flatMap(({ cas }) => cas ?? [])];
  expect(numbers.filter((cas) => !isCasNumber(cas))).toEqual([]);
  const entries = new Set(fragranceAllergens.map(({ id }) => id));
  const referred = [...essentialOils, ...constituents].flatMap((row) => row.allergenEntryId ?? []);
  expect(referred.filter((id) => !entries.has(id))).toEqual([]);
  const names = new Set(inciNames.map(({ id }) => id));
  expect(essentialOils.flatMap((oil) => oil.inciNameId ?? []).filter((id) => !names.has(id))).toEqual([]);
});

it('lets an alias stand for several oils only where it says so', () => {
  const owners = new Map<string, string[]>();
  for (const oil of essentialOils) {
    for (const alias of new Set(oil.aliases.map((text) => text.toLowerCase()))) {
      owners.set(alias, [...(owners.get(alias) ?? []), oil.id]);
    }
  }
  const ambiguous = new Set(ambiguousOilAliases.map(({ alias }) => alias.toLowerCase()));
  const shared = [...owners].filter(([, oils]) => oils.length > 1).map(([alias]) => alias);
  expect(shared.filter((alias) => !ambiguous.has(alias))).toEqual([]);
});
