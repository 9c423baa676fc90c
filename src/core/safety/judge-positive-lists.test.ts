import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { checkComposition } from './check-composition.ts';
import type { CompositionQuestion, RangedContribution } from './composition-check.ts';
import type { Market } from './safety-table-rows.ts';

const tables = boundSafetyTables();
const part = (name: string, mostPercent = 5, rest: Partial<RangedContribution> = {}): RangedContribution => ({
  name,
  mostPercent,
  confidence: 'supplier',
  fromMaterials: [name],
  ...rest,
});
const ask = (
  contributions: RangedContribution[],
  functions: CompositionQuestion['functions'] = [],
  market: Market = 'EU',
) => {
  const { markets, mayMakeForSale } = checkComposition(tables, {
    markets: [market],
    use: 'leave-on',
    category: '5A',
    firstSupplied: '2026-11-25',
    contributions,
    functions,
  });
  const open = (markets[0]?.verdicts ?? []).filter(({ verdict }) => verdict === 'unknown');
  return { mayMakeForSale, open: open.map(({ name, reason, citation }) => ({ name, reason, citation })) };
};
const reasons = (...given: Parameters<typeof ask>) => ask(...given).open.map(({ reason }) => reason);

// Regulation (EC) No 1223/2009, Article 14(1)(c), (d), (e): only what Annexes IV, V, VI list.
describe('what only listed substances may be used as', () => {
  it('is not known of a colour that no table lists, though no rule speaks of it', () => {
    expect(ask([part('CI 99999')], [{ name: 'CI 99999', as: 'colourant' }])).toEqual({
      mayMakeForSale: 'decide',
      open: [
        {
          name: 'CI 99999',
          reason: 'positive-list-not-in-tables',
          citation: 'Regulation (EC) No 1223/2009, Article 14(1)(c) and Annex IV',
        },
      ],
    });
  });

  it('stays a question where the colour is listed: its conditions of use are not in the tables', () => {
    for (const name of ['CI 77891', 'CI 77491', 'ci 77499', 'CI 77891 (Titanium Dioxide)', 'Ultramarine'])
      expect(reasons([part(name)], [{ name, as: 'colourant' }]), name).toEqual(['conditions-not-in-tables']);
    const numbered = part('Red pigment', 2, { alsoCas: ['1309-37-1'] });
    expect(reasons([numbered], [{ name: 'Red pigment', as: 'colourant' }])).toEqual([
      'conditions-not-in-tables',
    ]);
  });

  it('is asked of a colour number whatever it is said to be for, and of one in a pigment once', () => {
    expect(reasons([part('CI 77491')])).toEqual(['conditions-not-in-tables']);
    expect(reasons([part('CI 10316')])).toEqual(['positive-list-not-in-tables']);
    const pearl = [part('Mica'), part('CI 77891', 2)];
    const told = { name: 'Mica', as: 'colourant', parts: ['CI 77891'] } as const;
    expect(ask(pearl, [told]).open.map(({ name }) => name)).toEqual(['CI 77891']);
    expect(reasons([part('Mica')], [{ name: 'Mica', as: 'colourant' }])).toEqual([
      'positive-list-not-in-tables',
    ]);
  });

  it('is answered by the row of a preservative, as such or in a blend, and by nothing else', () => {
    const preservative = (name: string, parts: string[] = []) => [
      { name, as: 'preservative', parts } as const,
    ];
    expect(reasons([part('Phenoxyethanol', 0.5)], preservative('Phenoxyethanol'))).toEqual([]);
    expect(
      reasons([part('Keeper'), part('Phenoxyethanol', 0.5)], preservative('Keeper', ['Phenoxyethanol'])),
    ).toEqual([]);
    expect(reasons([part('Keeper')], preservative('Keeper'))).toEqual(['positive-list-not-in-tables']);
    // A row of Annex III is no listing among the preservatives.
    const scent = preservative('Benzyl Benzoate');
    expect(reasons([part('Benzyl Benzoate', 0.1)], scent)).toEqual(['positive-list-not-in-tables']);
  });

  it('is asked of every UV filter, by its own point of the article', () => {
    const { open } = ask([part('Zinc Oxide')], [{ name: 'Zinc Oxide', as: 'uv-filter' }], 'GB');
    expect(open).toMatchObject([
      {
        reason: 'positive-list-not-in-tables',
        citation: 'Regulation (EC) No 1223/2009, Article 14(1)(e) and Annex VI',
      },
    ]);
  });

  it('is asked of colours by the law of the United States there, and not of preservatives', () => {
    const us = (as: 'colourant' | 'preservative') =>
      ask([part('CI 77891')], [{ name: 'CI 77891', as }], 'US').open;
    expect(us('colourant').map(({ reason }) => reason)).toEqual([
      'law-not-in-tables',
      'positive-list-not-in-tables',
    ]);
    expect(us('colourant')[1]?.citation).toContain('21 CFR 73, 74 and 82');
    expect(ask([part('Keeper')], [{ name: 'Keeper', as: 'preservative' }], 'US').open).toHaveLength(1);
  });

  it('is not asked of what is no such thing, nor of none of it', () => {
    expect(reasons([part('Cera Alba'), part('Mica'), part('Titanium Dioxide')])).toEqual([]);
    expect(reasons([part('CI 99999', 0)])).toEqual([]);
  });
});
