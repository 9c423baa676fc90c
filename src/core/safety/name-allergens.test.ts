import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { allergenCasTraps, fragranceAllergens } from '../../reference/index.ts';
import { type NamingContext, nameAllergens } from './name-allergens.ts';
import type { Contribution } from './substance.ts';

const tables = boundSafetyTables();
const AFTER = '2026-11-25';
const name = (contributions: Contribution[], context: Partial<NamingContext> = {}) =>
  nameAllergens(tables, { market: 'EU', use: 'leave-on', firstSupplied: AFTER, contributions, ...context });
const labels = (contributions: Contribution[], context: Partial<NamingContext> = {}): string[] =>
  name(contributions, context).named.map(({ labelName }) => labelName);

describe('naming fragrance allergens', () => {
  it('adds isomers under the one name of their entry', () => {
    const answer = name([
      { name: 'Geranial', percent: 0.0006 },
      { name: 'Neral', percent: 0.0005 },
    ]);
    expect(answer.named).toMatchObject([
      { labelName: 'Citral', percent: 0.0011, entry: 70, members: ['Geranial', 'Neral'] },
    ]);
  });

  it('names an oil and its constituents as entries of their own', () => {
    expect(
      labels([
        { name: 'Lavandula Angustifolia Oil', percent: 0.5 },
        { name: 'Linalool', percent: 0.2 },
      ]),
    ).toEqual(['Lavandula Oil/Extract', 'Linalool']);
  });

  it('counts one substance from several materials together', () => {
    const twice = [
      { name: 'linalool', percent: 0.0006 },
      { name: 'Linalool', cas: '78-70-6', percent: 0.0006 },
    ];
    expect(labels(twice)).toEqual(['Linalool']);
  });

  it('names none in the United States, with the reason, whatever the amount and the doubt', () => {
    const trap = allergenCasTraps.find(({ materials }) => materials.length > 1)?.cas ?? '';
    const doubtful = { name: 'from the supplier', cas: trap, percent: 1 };
    expect(name([doubtful]).unknown).toHaveLength(1);
    const given = [{ name: 'Linalool', percent: 5 }, { name: 'Cera Alba', percent: 4 }, doubtful];
    const answer = name(given, { market: 'US' });
    expect(answer).toMatchObject({ named: [], unknown: [] });
    const reasons = answer.notNamed.map(({ name: label, reason }) => [label, reason]);
    expect(reasons).toContainEqual(['Linalool', 'no-duty-in-market']);
    expect(reasons).toContainEqual(['from the supplier', 'no-duty-in-market']);
    expect(reasons).toContainEqual(['Cera Alba', 'no-entry']);
  });

  it('lists what no entry has, and does not name it', () => {
    expect(name([{ name: 'Cera Alba', percent: 4 }])).toMatchObject({
      named: [],
      notNamed: [{ name: 'Cera Alba', reason: 'no-entry' }],
    });
  });

  it('is unknown for a shared number, with the names that it may have to carry', () => {
    const answer = name([{ name: 'orange oil from a new supplier', cas: '72968-50-4', percent: 0.2 }]);
    expect(answer.named).toEqual([]);
    expect(answer.unknown).toMatchObject([
      {
        reason: 'shared-cas',
        mayBe: ['Citrus Aurantium Flower Oil', 'Citrus Aurantium Peel Oil'],
        tellApartBy: ['plantPart'],
      },
    ]);
  });
});

describe.each(fragranceAllergens)('entry $entry, $labelName', (row) => {
  it.each([
    ['leave-on', 0.001, 0.001000000001],
    ['rinse-off', 0.01, 0.010000000001],
  ] as const)('is named strictly over its %s threshold', (use, at, above) => {
    expect(labels([{ name: row.labelName, percent: at }], { use })).toEqual([]);
    expect(labels([{ name: row.labelName, percent: above }], { use })).toEqual([row.labelName]);
  });

  it('is found under each of its CAS numbers that it does not share', () => {
    const shared = new Set(allergenCasTraps.map(({ cas }) => cas));
    for (const cas of row.match.cas.filter((number) => !shared.has(number))) {
      expect([cas, ...labels([{ name: 'from the supplier', cas, percent: 1 }])]).toEqual([
        cas,
        row.labelName,
      ]);
    }
  });

  it('is named in Great Britain only if it stands in the list of 24', () => {
    expect(labels([{ name: row.labelName, percent: 1 }], { market: 'GB' })).toEqual(
      row.gb.listed ? [row.labelName] : [],
    );
  });

  it('is named by the day of first supply', () => {
    const isOld = row.requiredForPlacingFrom === '2005-03-11';
    const one = [{ name: row.labelName, percent: 1 }];
    expect(labels(one, { firstSupplied: '2026-07-31' })).toEqual(isOld ? [row.labelName] : []);
    expect(labels(one, { firstSupplied: '2026-08-01' })).toEqual([row.labelName]);
  });
});

describe('dates of Regulation (EU) 2023/1545', () => {
  const menthol = [{ name: 'Menthol', percent: 0.1 }];

  it('lets older stock be made available without the new names until 31 July 2028', () => {
    const placed = { firstSupplied: '2026-07-31' };
    expect(labels(menthol, { ...placed, lastSupplied: '2028-07-31' })).toEqual([]);
    expect(labels(menthol, { ...placed, lastSupplied: '2028-08-01' })).toEqual(['Menthol']);
  });

  it('holds in Northern Ireland on the same days', () => {
    expect(labels(menthol, { market: 'NI', firstSupplied: '2026-07-31' })).toEqual([]);
    expect(labels(menthol, { market: 'NI', firstSupplied: '2026-08-01' })).toEqual(['Menthol']);
  });

  it('tells the first day of a duty that has not begun', () => {
    expect(name(menthol, { firstSupplied: '2026-07-31' }).notNamed).toMatchObject([
      { name: 'Menthol', reason: 'not-yet-required', requiredForPlacingFrom: '2026-08-01' },
    ]);
  });

  it('counts the members that joined an older entry only from their own day', () => {
    const mixed = [
      { name: 'd-Limonene', cas: '5989-27-5', percent: 0.0008 },
      { name: 'l-Limonene', cas: '5989-54-8', percent: 0.0008 },
    ];
    expect(labels(mixed, { firstSupplied: '2026-07-31' })).toEqual([]);
    expect(name(mixed, { firstSupplied: '2026-08-01' }).named).toMatchObject([
      { labelName: 'Limonene', percent: 0.0016 },
    ]);
  });
});

describe('Great Britain', () => {
  it('keeps the older scope of CAS numbers', () => {
    const limonene = (cas: string) => [{ name: 'Limonene', cas, percent: 0.5 }];
    expect(labels(limonene('5989-27-5'), { market: 'GB' })).toEqual(['Limonene']);
    expect(labels(limonene('5989-54-8'), { market: 'GB' })).toEqual([]);
    expect(labels(limonene('5989-54-8'))).toEqual(['Limonene']);
  });

  it('has no duty that a shared number could leave open', () => {
    const answer = name([{ name: 'from the supplier', cas: '8028-48-6', percent: 1 }], { market: 'GB' });
    expect(answer).toMatchObject({ named: [], unknown: [], notNamed: [{ reason: 'not-listed-in-market' }] });
  });
});
