import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { matchRows } from './match-rows.ts';

const tables = boundSafetyTables();
const shared = [...tables.sharedCas];
const listedBy = (cas: string) => ({
  allergens: tables.allergens.byCas.get(cas) ?? [],
  restrictions: tables.restrictions.byCas.get(cas) ?? [],
  ifra: tables.ifra.byCas.get(cas) ?? [],
});
const TABLES = ['allergens', 'restrictions', 'ifra'] as const;

describe('a CAS number that several materials share', () => {
  it('is known of a good number of them', () => {
    expect(shared.length).toBeGreaterThan(10);
  });

  it.each(shared.map(([cas]) => [cas]))(
    'decides nothing alone, unless every row that lists it is told: %s',
    (cas) => {
      const found = matchRows(tables, { name: 'Something that no table names', cas });
      const chosen = TABLES.filter((table) => {
        const { kind, rows } = found[table];
        const candidates: readonly { readonly row: unknown }[] = listedBy(cas)[table];
        const told: readonly unknown[] = rows;
        return kind === 'rows' && rows.length > 0 && !candidates.every(({ row }) => told.includes(row));
      });
      expect(chosen).toEqual([]);
    },
  );

  it('leaves more than half of them in doubt where nothing else is told', () => {
    const isOpen = ([cas]: (typeof shared)[number]) => {
      const found = matchRows(tables, { name: 'Something that no table names', cas });
      return TABLES.some((table) => found[table].kind === 'unknown');
    };
    const listed = shared.filter(([cas]) => TABLES.some((table) => listedBy(cas)[table].length > 0));
    expect(listed.filter(isOpen).length * 2).toBeGreaterThan(listed.length);
  });
});
