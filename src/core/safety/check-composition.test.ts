import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { checkComposition } from './check-composition.ts';
import type { CompositionQuestion, RangedContribution } from './composition-check.ts';

const tables = boundSafetyTables();
const part = (
  name: string,
  mostPercent?: number,
  rest: Partial<RangedContribution> = {},
): RangedContribution => ({
  name,
  ...(mostPercent !== undefined && { mostPercent }),
  confidence: 'read',
  fromMaterials: ['rose-otto'],
  origin: 'natural',
  ...rest,
});
const check = (contributions: RangedContribution[], rest: Partial<CompositionQuestion> = {}) =>
  checkComposition(tables, {
    markets: ['EU', 'GB'],
    use: 'leave-on',
    category: '5A',
    firstSupplied: '2026-11-25',
    contributions,
    ...rest,
  });

describe('a full check of a revision', () => {
  it('may be made for sale where nothing is over and nothing unknown', () => {
    const answer = check([part('Geraniol', 0.02, { typicalPercent: 0.015 }), part('Cera Alba', 5)]);
    expect(answer).toMatchObject({ mayMakeForSale: 'yes', reasons: [] });
    expect(
      answer.markets.map(({ market, naming }) => [market, naming.named.map(({ labelName }) => labelName)]),
    ).toEqual([
      ['EU', ['Geraniol']],
      ['GB', ['Geraniol']],
    ]);
  });

  it('judges the most and shows the typical beside', () => {
    const [eu] = check([part('Methyl eugenol', 0.0004, { typicalPercent: 0.0001, leastPercent: 0 })]).markets;
    expect(eu?.verdicts[0]).toMatchObject({ percent: 0.0004, typicalPercent: 0.0001, verdict: 'over' });
  });

  it('says no, with market, substance and rule, where law or Standard is broken', () => {
    const answer = check([part('Methyl eugenol', 0.0004)], { markets: ['EU'] });
    expect(answer.mayMakeForSale).toBe('no');
    expect(answer.reasons).toEqual([
      {
        kind: 'over',
        blocks: 'yes',
        market: 'EU',
        substance: 'Methyl eugenol',
        rule: 'methyl-eugenol-eu-leave-on',
      },
    ]);
  });

  it('asks apart about two materials of one label name, whose numbers leave different things in doubt', () => {
    const odd = (cas: string) => part('Odd Oil', 2, { cas, alsoCas: [cas] });
    const ask = (...parts: RangedContribution[]) => check(parts, { markets: ['EU'] });
    const keysOf = ({ markets: [eu] }: ReturnType<typeof ask>) =>
      (eu?.verdicts ?? []).flatMap(({ unknownKey }) => unknownKey ?? []);
    const both = ask(odd('84603-73-6'), odd('84696-25-3'));
    expect(new Set(keysOf(both)).size).toBe(2);
    const [first = ''] = keysOf(both);
    const decision = {
      unknownKey: first,
      isAccepted: true,
      decidedBy: 'Ada Quill',
      decidedOn: '',
      reason: 'Seen',
    };
    const decided = check([odd('84603-73-6'), odd('84696-25-3')], { markets: ['EU'], decisions: [decision] });
    expect(decided.mayMakeForSale).toBe('decide');
  });

  it('tells the weakest confidence of the amounts and the materials behind a verdict', () => {
    const [eu] = check([
      part('Geraniol', 0.01, { confidence: 'memory' }),
      part('Geraniol', 0.01, { fromMaterials: ['palmarosa'] }),
    ]).markets;
    expect(eu?.verdicts[0]).toMatchObject({
      percent: 0.02,
      amountConfidence: 'memory',
      fromMaterials: ['rose-otto', 'palmarosa'],
    });
  });
});

describe('unknowns', () => {
  const camphor = [part('Camphor', 0.01)];
  const unknownKey = 'EU:ifra:camphor:value-not-known';
  const decision = {
    unknownKey,
    isAccepted: true,
    decidedBy: 'Ada',
    decidedOn: '2026-11-20',
    reason: 'far below 1 %',
  };
  const inEu = (decisions: CompositionQuestion['decisions']) =>
    check(camphor, { markets: ['EU'], ...(decisions !== undefined && { decisions }) });

  it('ask for a decision under a key that stays the same', () => {
    const answer = inEu(undefined);
    expect(answer.mayMakeForSale).toBe('decide');
    expect(answer.reasons).toMatchObject([{ kind: 'unknown', blocks: 'until-decided', unknownKey }]);
    expect(inEu(undefined).reasons).toEqual(answer.reasons);
  });

  it('are shown as decided by whom, never as within', () => {
    const answer = inEu([decision]);
    expect(answer.mayMakeForSale).toBe('yes');
    expect(answer.markets[0]?.verdicts).toMatchObject([
      { verdict: 'unknown', decision: { decidedBy: 'Ada' } },
    ]);
    expect(answer.reasons).toMatchObject([{ kind: 'unknown', blocks: 'no' }]);
  });

  it('stop the sale once a person has refused them', () => {
    expect(inEu([{ ...decision, isAccepted: false }])).toMatchObject({
      mayMakeForSale: 'no',
      reasons: [{ kind: 'unknown-refused' }],
    });
  });

  it('are not answered by a decision on something else', () => {
    expect(inEu([{ ...decision, unknownKey: 'EU:ifra:menthol:value-not-known' }]).mayMakeForSale).toBe(
      'decide',
    );
  });

  it('arise where a supplier does not say how much', () => {
    const answer = check([part('Methyl eugenol'), part('Coumarin'), part('Cera Alba')], { markets: ['EU'] });
    expect(answer.reasons.map(({ kind, substance, unknownKey: key }) => [kind, substance, key])).toEqual([
      ['unknown', 'Methyl eugenol', 'EU:law:methyl-eugenol:amount-not-known'],
      ['unknown', 'Methyl eugenol', 'EU:ifra:methyl-eugenol:amount-not-known'],
      ['unknown', 'Coumarin', 'EU:ifra:coumarin:amount-not-known'],
      ['name-unknown', 'Coumarin', 'EU:naming:coumarin::amount-not-known'],
    ]);
  });

  it('of naming are decided like those of limits', () => {
    const shared = [part('from the supplier', 0.2, { cas: '8028-48-6' })];
    const open = check(shared, { markets: ['EU'] });
    expect(open.reasons).toMatchObject([{ kind: 'name-unknown', blocks: 'until-decided' }]);
    const key = open.reasons[0]?.unknownKey ?? '';
    expect(
      check(shared, { markets: ['EU'], decisions: [{ ...decision, unknownKey: key }] }).mayMakeForSale,
    ).toBe('yes');
  });
});

describe("suppliers' limits and the report", () => {
  const materials = [{ materialId: 'rose', name: 'Rose otto', percent: 0.2 }];

  it('let the tightest decide, and say which kind it was', () => {
    const supplierLimits = [{ materialId: 'rose', mostPercent: 0.1, source: 'certificate of 3 May' }];
    expect(check([], { materials, supplierLimits })).toMatchObject({
      mayMakeForSale: 'no',
      supplier: [{ verdict: 'over', kind: 'supplier', percent: 0.2, limitPercent: 0.1 }],
      reasons: [{ kind: 'supplier-over', substance: 'Rose otto', rule: 'certificate of 3 May' }],
    });
  });

  it('never let a report loosen the law', () => {
    const report = {
      reference: 'SR-1',
      materials: [{ materialId: 'rose', name: 'Rose otto', mostPercent: 5 }],
    };
    const answer = check([part('Methyl eugenol', 0.01)], { markets: ['EU'], materials, report });
    expect(answer.report?.verdict).toBe('within');
    expect(answer.mayMakeForSale).toBe('no');
  });

  it('tell a missing report, an exceeded one and one past its review', () => {
    expect(check([], { report: null }).reasons).toMatchObject([{ kind: 'report-missing', blocks: 'yes' }]);
    const report = {
      reference: 'SR-1',
      reviewBy: '2026-11-24',
      materials: [{ materialId: 'rose', name: 'Rose otto', mostPercent: 0.1 }],
    };
    expect(check([], { materials, report }).reasons).toMatchObject([
      { kind: 'report-over', blocks: 'yes', substance: 'Rose otto' },
      { kind: 'report-review-passed', blocks: 'yes', rule: 'SR-1' },
    ]);
  });
});
