import { describe, expect, it } from 'vitest';
import type { Check } from './check.ts';
import { mergeMarkets } from './merge-markets.ts';

type Market = Check['markets'][number];
const verdict = (
  name: string,
  more: Partial<Market['verdicts'][number]> = {},
): Market['verdicts'][number] => ({
  forUse: null,
  name,
  verdict: 'within',
  typicalPercent: '0.1',
  mostPercent: '0.2',
  limitPercent: '1',
  kind: 'ifra',
  entry: 'Citral',
  edition: '49',
  source: 'IFRA Standards',
  confidence: 'read',
  fromMaterials: ['Orange oil'],
  reason: null,
  question: null,
  certificates: [],
  ...more,
});
const market = (name: Market['market'], verdicts: Market['verdicts']): Market => ({
  market: name,
  answer: 'yes',
  sentence: { code: 'check-market-yes', parameters: {} },
  verdicts,
  sumOfShares: null,
  notes: [],
  named: [],
});
const shown = (markets: Market[]) =>
  mergeMarkets({ markets }).map((row) => [row.name, row.markets.join('+')]);

describe('verdicts of several markets', () => {
  it('stand once where the markets say the same', () => {
    expect(shown([market('GB', [verdict('Citral')]), market('NI', [verdict('Citral')])])).toEqual([
      ['Citral', 'GB+NI'],
    ]);
  });

  it('stand apart where a limit, an amount or a question differs', () => {
    const apart = [
      { limitPercent: '2' },
      { mostPercent: '0.3' },
      { question: 'NI:law' },
      { kind: 'law' as const },
    ];
    for (const more of apart)
      expect(shown([market('GB', [verdict('Citral')]), market('NI', [verdict('Citral', more)])])).toEqual([
        ['Citral', 'GB'],
        ['Citral', 'NI'],
      ]);
  });

  it('stay two where one market has two rules in the same words', () => {
    const two = [verdict('Citral'), verdict('Citral')];
    expect(shown([market('GB', two), market('EU', two)])).toEqual([
      ['Citral', 'GB+EU'],
      ['Citral', 'GB+EU'],
    ]);
  });

  it('are none where nothing has a verdict', () => {
    expect(mergeMarkets({ markets: [] })).toEqual([]);
    expect(shown([market('GB', []), market('NI', [verdict('Citral')])])).toEqual([['Citral', 'NI']]);
  });
});
