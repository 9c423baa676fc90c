import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import {
  essentialOils,
  fragranceAllergens,
  ifraLimits,
  inciNames,
  restrictedSubstances,
} from '../../reference/index.ts';
import { matchRows } from './match-rows.ts';
import { normaliseName } from './read-name.ts';

const tables = boundSafetyTables();
const TABLES = ['allergens', 'restrictions', 'ifra'] as const;
type Table = (typeof TABLES)[number];

const idsOf = (table: Table, name: string, cas?: string): readonly string[] => {
  const found = matchRows(tables, { name, ...(cas !== undefined && { alsoCas: [cas] }) })[table];
  return found.kind === 'rows' ? found.rows.map(({ id }) => id) : ['in doubt'];
};

interface Printed {
  readonly name: string;
  readonly cas: readonly string[];
}

/** Every name that a table prints, with the CAS numbers that it prints beside it. */
const PRINTED: readonly Printed[] = [
  ...[...ifraLimits, ...restrictedSubstances].flatMap(({ name, aliases = [], cas }) =>
    [name, ...aliases].map((each) => ({ name: each, cas })),
  ),
  ...fragranceAllergens.flatMap(({ labelName, match, members }) => [
    ...[labelName, ...match.names].map((name) => ({ name, cas: match.cas })),
    ...members,
  ]),
  ...essentialOils.flatMap(({ name, inciEu, aliases, cas, constituents }) => [
    ...[name, inciEu, ...aliases].map((each) => ({ name: each, cas })),
    ...constituents.flatMap((one) => (one.cas === undefined ? [] : [{ name: one.name, cas: [one.cas] }])),
  ]),
  ...inciNames.flatMap(({ name, inciEu, inciUs = inciEu, cas }) =>
    [name, inciEu, inciUs].map((each) => ({ name: each, cas })),
  ),
];

/**
 * Known as sweet orange by the oils' table. The entry on its label name counts bitter orange too, whose expressed peel oil
 * alone has a Standard: by its numbers, not by these names.
 */
const TOLD_OTHERWISE = ['citrus aurantium dulcis peel oil', 'citrus sinensis peel oil'];

describe('names that one table prints and another does not', () => {
  it('find by themselves in each table what the numbers beside them find there', () => {
    const missed = PRINTED.flatMap(({ name, cas }) =>
      TABLES.filter((table) => idsOf(table, name).length === 0).flatMap((table) =>
        cas
          .filter((number) => !tables.sharedCas.has(number) && idsOf(table, name, number).length > 0)
          .map((number) => [normaliseName(name), table, number]),
      ),
    );
    expect([...new Set(missed.map(([name]) => name))].sort()).toEqual(TOLD_OTHERWISE);
    expect(new Set(missed.map(([, table]) => table))).toEqual(new Set(['ifra']));
  });

  it.each([
    ['Cinnamaldehyde', 'allergens', 'cinnamal'],
    ['Cinnamic aldehyde', 'allergens', 'cinnamal'],
    ['l-Carvone', 'allergens', 'carvone'],
    ['Anisyl alcohol', 'allergens', 'anise-alcohol'],
    ['alpha-Hexyl cinnamic aldehyde', 'allergens', 'hexyl-cinnamal'],
    ['Oakmoss absolute', 'allergens', 'evernia-prunastri-extract'],
    ['Lavandin oil', 'allergens', 'lavandula-oil-extract'],
    ['Citral (neral + geranial)', 'allergens', 'citral'],
    ['Eugenol methyl ether', 'ifra', 'methyl-eugenol'],
    ['trans-Isoeugenol', 'ifra', 'isoeugenol'],
    ['cis-Rose Ketone 1', 'ifra', 'rose-ketones'],
    ['Melaleuca oil', 'ifra', 'tea-tree-oil'],
    ['Cumin seed oil', 'restrictions', 'cumin-oil'],
    ['Rose ketones', 'restrictions', 'rose-ketones'],
  ] as const)('%s is found among %s as %s', (name, table, id) => {
    expect(idsOf(table, name)).toEqual([id]);
  });

  it('go by the other names of the row where its only number is shared', () => {
    expect(idsOf('allergens', 'Verbena absolute (Lippia citriodora)')).toEqual([
      'lippia-citriodora-absolute',
    ]);
    expect(idsOf('allergens', 'Jasmine absolute (sambac)')).toEqual(['jasmine-oil-extract']);
  });

  it('stay in doubt where a number of theirs is a known oil that leads elsewhere, until the number is told', () => {
    expect(idsOf('ifra', 'Citrus Aurantium Peel Oil')).toEqual(['in doubt']);
    expect(idsOf('ifra', 'Citrus Aurantium Peel Oil', '8028-48-6')).toEqual([]);
    expect(idsOf('ifra', 'Citrus Aurantium Peel Oil', '8008-57-9')).toEqual([]);
    expect(idsOf('ifra', 'Citrus Aurantium Peel Oil', '68916-04-1')).toEqual([
      'bitter-orange-peel-oil-expressed',
    ]);
  });

  it('go by plant part and process as numbers do', () => {
    expect(matchRows(tables, { name: 'Tagetes absolute' }).restrictions.rows.length).toBeGreaterThan(0);
    expect(idsOf('ifra', 'Bitter orange oil (expressed)')).toEqual(['bitter-orange-peel-oil-expressed']);
    expect(matchRows(tables, { name: 'Lemon peel oil', process: 'distilled' }).ifra.rows).toEqual([]);
  });

  it('change nothing for a name that no table prints, nor for one that is free', () => {
    for (const table of TABLES) {
      expect(idsOf(table, 'Something that no table names')).toEqual([]);
      expect(idsOf(table, 'Cera Alba')).toEqual([]);
    }
  });
});
