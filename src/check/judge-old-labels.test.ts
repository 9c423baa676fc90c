import { describe, expect, it } from 'vitest';
import type { Market } from '../contract/index.ts';
import type { RangedContribution } from '../core/safety/index.ts';
import type { OpenedRevision } from './checked.ts';
import { judgeOldLabels } from './judge-old-labels.ts';

const brings = (name: string, mostPercent?: string): RangedContribution => ({
  name,
  origin: 'natural',
  fromMaterials: ['Invented scent'],
  confidence: 'supplier',
  ...(mostPercent !== undefined && { mostPercent }),
});

const opened = (contributions: readonly RangedContribution[]): OpenedRevision =>
  ({
    revision: { id: 'r', number: 1 },
    formula: { id: 'f', name: 'Butter', kind: 'mixture' },
    details: {
      use: 'leave-on',
      category: '5A',
      bodyPart: '',
      productType: '',
      minAgeMonths: null,
      otherUses: [],
    },
    baseIds: [],
    expanded: { materials: [] },
    materials: new Map(),
    kinds: [],
    contributions,
  }) as unknown as OpenedRevision;

const judge = (
  market: Market,
  days: { labelledOn: string; placedOn: string; today: string },
  contributions = [brings('Menthol', '0.1')],
) => judgeOldLabels({ opened: opened(contributions), decisions: [], market, ...days });

const on = (day: string, labelledOn = '2026-07-31') => ({ labelledOn, placedOn: day, today: day });

describe.each(['EU', 'NI'] as const)('labels of before Regulation (EU) 2023/1545 in %s', (market) => {
  it('lack what the newer law asks for, and say until when they will do', () => {
    expect(judge(market, on('2026-07-31'))).toEqual([
      {
        market,
        labelledOn: '2026-07-31',
        lacking: ['Menthol'],
        undecided: [],
        placedUntil: '2026-07-31',
        soldUntil: '2028-07-31',
        verdict: 'may-be-placed',
      },
    ]);
  });

  it('are stopped on the day after each last day', () => {
    const verdict = (placedOn: string, today: string) =>
      judge(market, { labelledOn: '2026-07-31', placedOn, today }).map((each) => each.verdict);
    expect(verdict('2026-08-01', '2026-08-01')).toEqual(['placed-too-late']);
    expect(verdict('2026-07-31', '2026-08-01')).toEqual(['may-be-sold-on']);
    expect(verdict('2026-07-31', '2028-07-31')).toEqual(['may-be-sold-on']);
    expect(verdict('2026-07-31', '2028-08-01')).toEqual(['sold-too-late']);
  });

  it('lack nothing once they are worded by it', () => {
    expect(judge(market, on('2026-08-01', '2026-08-01'))).toEqual([]);
  });

  it('lack nothing at the threshold of 0.001 %, and something just above', () => {
    expect(judge(market, on('2026-08-01'), [brings('Menthol', '0.001')])).toEqual([]);
    expect(judge(market, on('2026-08-01'), [brings('Menthol', '0.00100001')])).toHaveLength(1);
  });

  it('name what was to be named before as well', () => {
    expect(judge(market, on('2026-08-01'), [brings('Linalool', '0.1')])).toEqual([]);
  });

  it('are not taken for complete where an amount is not known', () => {
    expect(judge(market, on('2026-08-01'), [brings('Menthol')])).toMatchObject([
      { lacking: [], undecided: ['Menthol'], verdict: 'placed-too-late' },
    ]);
  });
});

describe.each(['GB', 'US'] as const)('the same labels in %s', (market) => {
  it.each(['2026-07-31', '2026-08-01', '2028-07-31', '2028-08-01'])('lack nothing on %s', (day) => {
    expect(judge(market, on(day))).toEqual([]);
    expect(judge(market, on(day), [brings('Menthol')])).toEqual([]);
  });
});
