import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { allergenCasTraps, essentialOils, fragranceAllergens } from '../../reference/index.ts';
import { matchRows } from './match-rows.ts';
import type { Substance } from './substance.ts';

const tables = boundSafetyTables();
const match = (substance: Substance) => matchRows(tables, substance);
const idsOf = (
  found: ReturnType<typeof match>[keyof ReturnType<typeof match>],
): readonly string[] | string => (found.kind === 'rows' ? found.rows.map(({ id }) => id) : found.doubt);

describe('recognising substances', () => {
  it('goes by name, whatever the case, spaces and slashes', () => {
    expect(idsOf(match({ name: 'lavandula oil /extract' }).allergens)).toEqual(['lavandula-oil-extract']);
    expect(idsOf(match({ name: 'METHYL EUGENOL' }).restrictions)).toEqual(['methyl-eugenol']);
  });

  it('looks up other names and numbers whatever the name says, and takes all that they tell', () => {
    const both = match({ name: 'Linalool', alsoCas: ['5989-27-5'] });
    expect([...idsOf(both.allergens)].sort()).toEqual(['limonene', 'linalool']);
    expect(idsOf(match({ name: 'Parfum', alsoNames: ['Linalool'] }).allergens)).toEqual(['linalool']);
    // Annex II, entry 1666, behind a number that is harmless.
    const scent = match({ name: 'Parfum', cas: '106-24-1', alsoCas: ['106-24-1', '80-54-6'] });
    expect(scent.restrictions.rows.map((row) => row.annex)).toContain('II');
  });

  it('lets a name settle only what it names itself: Parfum and a foreign number stay in doubt', () => {
    // Annex II of Regulation (EC) No 1223/2009 prohibits the seed oil of Laurus nobilis (entry 359), crude Peru balsam
    // (1136) and an extract of margosa under numbers that other materials share.
    const named = (name: string, ...alsoCas: string[]) => match({ name, cas: alsoCas[0] ?? '', alsoCas });
    for (const name of ['lot 12', 'Parfum', 'Cocos Nucifera Oil'])
      expect(named(name, '84603-73-6').restrictions.kind, name).toBe('unknown');
    expect(named('Parfum', '8007-00-9').restrictions.kind).toBe('unknown');
    expect(match({ name: 'Parfum', alsoNames: ['Bergamot essential oil'] }).ifra.kind).toBe('unknown');
    expect(
      match({ name: 'Citrus Aurantium Bergamia Peel Oil', alsoNames: ['Bergamot essential oil'] }).ifra.kind,
    ).toBe('rows');
  });

  it('keeps every doubt that its numbers leave, not the first alone', () => {
    const laurel = match({ name: 'Parfum', alsoCas: ['84603-73-6'] }).restrictions;
    const margosa = match({ name: 'Parfum', alsoCas: ['84696-25-3'] }).restrictions;
    const both = match({ name: 'Parfum', alsoCas: ['84603-73-6', '84696-25-3'] }).restrictions;
    const idsThatMayBe = (found: typeof both) =>
      found.kind === 'unknown' ? found.mayBe.map(({ id }) => id) : [];
    expect(idsThatMayBe(laurel).length * idsThatMayBe(margosa).length).toBeGreaterThan(0);
    expect(idsThatMayBe(both)).toEqual([...idsThatMayBe(laurel), ...idsThatMayBe(margosa)]);
  });

  it('goes by name before CAS', () => {
    expect(idsOf(match({ name: 'Linalool', cas: '5989-27-5' }).allergens)).toEqual(['linalool']);
  });

  it('goes by CAS where the name is not known', () => {
    expect(idsOf(match({ name: 'lot 12', cas: '78-70-6' }).allergens)).toEqual(['linalool']);
  });

  it('knows the names of the trade', () => {
    expect(idsOf(match({ name: 'Lavender' }).allergens)).toEqual(['lavandula-oil-extract']);
    expect(idsOf(match({ name: 'Spearmint' }).allergens)).toEqual(['mentha-viridis-leaf-oil']);
    expect(idsOf(match({ name: 'Cypress' }).restrictions)).toEqual(['peroxide-cypress']);
  });

  it('finds nothing for a name and number that no table has', () => {
    expect(idsOf(match({ name: 'Butyrospermum Parkii Butter', cas: '194043-92-0' }).allergens)).toEqual([]);
  });

  it('takes a citrus oil as expressed until it is said to be distilled or furocoumarin-free', () => {
    expect(idsOf(match({ name: 'Lime oil' }).ifra)).toEqual(['lime-oil-expressed']);
    expect(idsOf(match({ name: 'Lime oil', process: 'distilled' }).ifra)).toEqual([]);
    expect(idsOf(match({ name: 'Bergamot oil', process: 'furocoumarin-free' }).ifra)).toEqual([]);
    expect(idsOf(match({ name: 'Bergamot oil', process: 'furocoumarin-free' }).allergens)).toEqual([
      'citrus-aurantium-bergamia-peel-oil',
    ]);
  });

  it('is in doubt where the name says another part than the field', () => {
    expect(idsOf(match({ name: 'Laurus Nobilis Leaf Oil', plantPart: 'seed' }).allergens)).toBe(
      'name-contradicts-fields',
    );
  });

  it('is in doubt where a name of the trade fits oils that differ', () => {
    expect(idsOf(match({ name: 'Bergamot' }).ifra)).toBe('ambiguous-name');
    expect(idsOf(match({ name: 'Orange oil' }).allergens)).toEqual(['citrus-aurantium-peel-oil']);
  });

  it('keeps substances added as such apart from natural contents', () => {
    expect(idsOf(match({ name: 'Safrole', origin: 'natural' }).restrictions)).toEqual(['safrole-natural']);
    expect(idsOf(match({ name: 'Safrole', origin: 'added' }).restrictions)).toEqual(['safrole-added']);
    expect(match({ name: 'Safrole' }).restrictions).toMatchObject({ kind: 'rows', rows: { length: 2 } });
  });
});

describe.each(essentialOils)('$name of the oils table', (oil) => {
  const { plantPart, process } = oil;
  const kind = { plantPart, ...(process !== undefined && { process }) };
  const entry = oil.allergenEntryId === undefined ? [] : [oil.allergenEntryId];

  it('is its allergen entry, by label name and by each CAS number', () => {
    expect(idsOf(match({ name: oil.inciEu, ...kind }).allergens)).toEqual(entry);
    for (const cas of oil.cas) {
      expect([cas, idsOf(match({ name: 'from the supplier', cas, ...kind }).allergens)]).toEqual([
        cas,
        entry,
      ]);
    }
  });

  it('is phototoxic by the Standards where its own table says so', () => {
    const { ifra } = match({ name: oil.inciEu, ...kind });
    const rows = ifra.kind === 'rows' ? ifra.rows : [];
    expect(rows.some(({ sumGroup }) => sumGroup === 'phototoxic')).toBe(oil.phototoxic);
  });
});

describe('CAS numbers that several materials share', () => {
  const entries = new Map(fragranceAllergens.map((row) => [row.id, row]));

  it.each(allergenCasTraps)(
    '$cas never decides alone, unless all its materials lead to one entry',
    (trap) => {
      const ways = new Set(trap.materials.map(({ allergenEntryId }) => allergenEntryId));
      const found = idsOf(match({ name: 'from the supplier', cas: trap.cas }).allergens);
      expect(found).toEqual(ways.size === 1 ? [...ways] : 'shared-cas');
    },
  );

  const told = allergenCasTraps.flatMap(({ cas, materials }) =>
    materials.map((material) => ({ cas, ...material })),
  );
  const tellable = told.filter(({ plantPart, process, form }) => plantPart ?? process ?? form);

  it.each(tellable)(
    '$cas is $name once plant part or process say so',
    ({ cas, plantPart, process, form, allergenEntryId }) => {
      const kind =
        process ?? (form === undefined ? undefined : form.startsWith('crude') ? 'crude' : 'distilled');
      const found = idsOf(
        match({
          name: 'from the supplier',
          cas,
          ...(plantPart !== undefined && { plantPart }),
          ...(kind !== undefined && { process: kind }),
        }).allergens,
      );
      expect(found).toEqual(allergenEntryId === undefined ? [] : [entries.get(allergenEntryId)?.id]);
    },
  );

  it('settles by a known name: rosehip oil is not the rose flower oil of the same number', () => {
    expect(idsOf(match({ name: 'Rosehip oil', cas: '84696-47-9' }).allergens)).toEqual([]);
    expect(idsOf(match({ name: 'Rosa Canina Seed Oil', cas: '84696-47-9' }).allergens)).toEqual([]);
    expect(idsOf(match({ name: 'Rosa Canina Flower Oil', cas: '84696-47-9' }).allergens)).toEqual([
      'rose-flower-oil-extract',
    ]);
  });

  it('prohibits laurel seed oil, verbena other than the absolute, crude Peru balsam, and not what shares their numbers', () => {
    const law = (cas: string, kind: Partial<Substance>) =>
      idsOf(match({ name: 'lot', cas, ...kind }).restrictions);
    expect(law('84603-73-6', { plantPart: 'seed' })).toEqual(['laurel-seed-oil']);
    expect(law('84603-73-6', { plantPart: 'leaf' })).toEqual([]);
    expect(law('84603-73-6', {})).toBe('shared-cas');
    expect(law('8024-12-2', { process: 'distilled' })).toEqual(['verbena-oil']);
    expect(law('8024-12-2', { process: 'absolute' })).toEqual(['verbena-absolute']);
    expect(law('8024-12-2', { process: 'co2' })).toBe('may-be-prohibited');
    expect(law('8024-12-2', {})).toBe('shared-cas');
    expect(law('8007-00-9', { process: 'crude' })).toEqual(['peru-balsam']);
    expect(law('8007-00-9', { process: 'distilled' })).toEqual(['myroxylon-oil']);
    expect(law('8007-00-9', {})).toBe('shared-cas');
  });
});
