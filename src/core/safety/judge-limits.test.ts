import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { ifraLimits, restrictedSubstances } from '../../reference/index.ts';
import { judgeLimits, type LimitsContext } from './judge-limits.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import { COUNTED_AS_PUT_IN, LESS_THAN_PUT_IN } from './plan-limits.ts';
import type { Contribution } from './substance.ts';

const tables = boundSafetyTables();
const BUTTER: LimitsContext = { market: 'EU', use: 'leave-on', category: '5A', date: '2026-11-25' };
const judge = (contributions: Contribution[], context: Partial<LimitsContext> = {}) =>
  judgeLimits(tables, { ...BUTTER, ...context, contributions });
const wordOf = (ruleId: string, contributions: Contribution[], context: Partial<LimitsContext> = {}) =>
  judge(contributions, context).verdicts.find((verdict) => verdict.ruleId === ruleId)?.verdict;
const ifraWordOf = (ruleId: string, contributions: Contribution[], context: Partial<LimitsContext> = {}) =>
  judge(contributions, context).verdicts.find(
    (verdict) => verdict.kind === 'ifra' && verdict.ruleId === ruleId,
  )?.verdict;
const lawOn = (contribution: Contribution, context: Partial<LimitsContext> = {}): LimitVerdict | undefined =>
  judge([contribution], context).verdicts.find(
    ({ kind, reason }) => kind === 'law' && reason !== 'needs-certificate',
  );

describe('a market whose law is not in the tables', () => {
  it('has one verdict of law for all that is in it: unknown, never allowed', () => {
    const answer = judge(
      [
        { name: 'Citral', percent: 0.1 },
        { name: 'Methyl eugenol', percent: 50 },
        { name: 'Cera Alba', percent: 4 },
      ],
      { market: 'US' },
    );
    const law = answer.verdicts.filter(({ kind }) => kind === 'law');
    expect(law).toMatchObject([
      {
        verdict: 'unknown',
        reason: 'law-not-in-tables',
        members: ['Citral', 'Methyl eugenol', 'Cera Alba'],
        percent: 100,
      },
    ]);
    expect(answer.verdicts.filter(({ verdict }) => verdict === 'no-rule')).toEqual([]);
    expect(ifraWordOf('citral', [{ name: 'Citral', percent: 50 }], { market: 'US' })).toBe('over');
  });

  it('says so of an empty product too', () => {
    expect(judge([], { market: 'US' }).verdicts.map(({ verdict }) => verdict)).toEqual(['unknown']);
    expect(judge([]).verdicts).toEqual([]);
  });
});

describe('IFRA Standards, 49th Amendment', () => {
  const confirmed = ifraLimits.flatMap((row) =>
    Object.entries(row.limits).flatMap(([category, limit]) =>
      typeof limit === 'number' ? [{ row, category, limit }] : [],
    ),
  );

  it('has more than nine hundred confirmed limits to stand on', () => {
    expect(confirmed.length).toBeGreaterThan(900);
  });

  it('allows each confirmed limit itself and nothing above it', () => {
    for (const { row, category, limit } of confirmed) {
      const at = (percent: number) => [
        category,
        row.id,
        ifraWordOf(row.id, [{ name: row.name, percent }], { category }),
      ];
      expect(at(limit)).toEqual([category, row.id, 'within']);
      expect(at(limit * (1 + 1e-9) + 1e-12)).toEqual([category, row.id, 'over']);
    }
  });

  it('is unknown where the value of a category is not confirmed', () => {
    expect(wordOf('farnesol', [{ name: 'Farnesol', percent: 0.001 }])).toBe('unknown');
    expect(wordOf('alpha-bisabolol', [{ name: 'Bisabolol', percent: 0.1 }], { category: '1' })).toBe(
      'unknown',
    );
  });

  it('lets rinse-off products have phototoxic oils, whatever the category', () => {
    const lime = [{ name: 'Lime oil', percent: 5 }];
    expect(judge(lime, { use: 'rinse-off', category: '9' }).sumOfShares).toBeUndefined();
    expect(wordOf('lime-oil-expressed', lime, { use: 'rinse-off' })).toBe('within');
    expect(wordOf('lime-oil-expressed', lime)).toBe('over');
  });
});

describe('phototoxic oils together', () => {
  const oils = (lemon: number, lime: number): Contribution[] => [
    { name: 'Lemon oil', percent: lemon },
    { name: 'Lime oil', percent: lime },
  ];

  it('may use up the limit exactly, and not a picopercent more', () => {
    expect(judge(oils(1, 0.35))).toMatchObject({ sumOfShares: 1 });
    expect(wordOf('phototoxic-sum', oils(1, 0.35))).toBe('within');
    expect(wordOf('phototoxic-sum', oils(1, 0.350000000001))).toBe('over');
    expect(wordOf('phototoxic-sum', oils(0.999999999999, 0.35))).toBe('within');
  });

  it('may be over together though each is within', () => {
    const answer = judge(oils(1.5, 0.5));
    expect(
      answer.verdicts.filter(({ ruleId }) => ruleId?.endsWith('pressed')).map(({ verdict }) => verdict),
    ).toEqual(['within', 'within']);
    expect(answer.decidedBy).toMatch(/^phototoxic sum \(ifra\)/);
  });

  it('tells the share of a single oil', () => {
    expect(judge([{ name: 'Bergamot oil', percent: 0.1 }]).sumOfShares).toBe(0.25);
  });

  it('leaves out the distilled and the furocoumarin-free', () => {
    const free: Contribution[] = [
      { name: 'Lime oil', process: 'distilled', percent: 2 },
      { name: 'Bergamot oil', process: 'furocoumarin-free', percent: 2 },
    ];
    expect(judge(free).sumOfShares).toBeUndefined();
  });
});

describe('law', () => {
  it('decides before a looser Standard: methyl eugenol at 0.0002 % in a leave-on product', () => {
    const methylEugenol = (percent: number): Contribution => ({ name: 'Methyl eugenol', percent });
    expect(lawOn(methylEugenol(0.0002))).toMatchObject({ verdict: 'within', limitPercent: 0.0002 });
    expect(lawOn(methylEugenol(0.000200000001))).toMatchObject({ verdict: 'over', entry: '102' });
    expect(judge([methylEugenol(0.0005)]).decidedBy).toMatch(/^Methyl eugenol \(law\)/);
    expect(lawOn(methylEugenol(0.001), { use: 'rinse-off', category: '9' })?.verdict).toBe('within');
  });

  it('prohibits what the annex prohibits, though the Standard has a limit', () => {
    expect(judge([{ name: 'Dihydrocoumarin', percent: 0.01 }])).toMatchObject({
      decidedBy: expect.stringMatching(/^Dihydrocoumarin \(law\)/),
    });
    expect(lawOn({ name: 'Dihydrocoumarin', percent: 0.01 })?.verdict).toBe('prohibited');
    expect(lawOn({ name: 'Dihydrocoumarin', percent: 0 })?.verdict).toBe('within');
  });

  it('allows natural safrole to 100 mg/kg and prohibits it added', () => {
    const safrole = (percent: number, origin: 'natural' | 'added'): Contribution => ({
      name: 'Safrole',
      percent,
      origin,
    });
    expect(lawOn(safrole(0.01, 'natural'))?.verdict).toBe('within');
    expect(lawOn(safrole(0.010000000001, 'natural'))?.verdict).toBe('over');
    expect(lawOn(safrole(0.001, 'added'))?.verdict).toBe('prohibited');
    expect(judge([{ name: 'Safrole', percent: 0.001 }]).verdicts.map(({ verdict }) => verdict)).toContain(
      'prohibited',
    );
  });

  it('adds rows that share one limit', () => {
    const octynoates = (first: number, second: number): Contribution[] => [
      { name: 'Methyl 2-Octynoate', percent: first },
      { name: 'Methyl octine carbonate', percent: second },
    ];
    const together = (contributions: Contribution[]) =>
      judge(contributions).verdicts.find(({ members, kind }) => kind === 'law' && members.length === 2);
    expect(together(octynoates(0.008, 0.002))).toMatchObject({ verdict: 'within', percent: 0.01 });
    expect(together(octynoates(0.008, 0.0020001))).toMatchObject({ verdict: 'over' });
    expect(wordOf('methyl-octine-carbonate-eu-any', octynoates(0, 0.0021))).toBe('over');
  });

  it('takes the rule of the product type before the general one', () => {
    const salicylate: Contribution = { name: 'Methyl Salicylate', percent: 0.06 };
    expect(lawOn(salicylate)?.limitPercent).toBe(0.06);
    expect(lawOn(salicylate, { productType: 'body-lotion-spray' })?.limitPercent).toBe(0.04);
    expect(lawOn(salicylate, { category: '1' })?.limitPercent).toBe(0.03);
    expect(
      lawOn(salicylate, { productType: 'hand-wash', use: 'rinse-off', category: '9' })?.limitPercent,
    ).toBe(0.6);
  });

  it('takes the tightest of what a category leaves open', () => {
    expect(
      lawOn({ name: 'Methyl Salicylate', percent: 0.1 }, { use: 'rinse-off', category: '9' }),
    ).toMatchObject({
      limitPercent: 0.06,
      verdict: 'over',
    });
  });

  it('goes by the youngest user, and takes category 5D for babies', () => {
    const salicylate: Contribution = { name: 'Methyl Salicylate', percent: 0.01 };
    expect(lawOn(salicylate)?.verdict).toBe('within');
    expect(lawOn(salicylate, { minAgeMonths: 72 })?.verdict).toBe('within');
    expect(lawOn(salicylate, { minAgeMonths: 71 })?.verdict).toBe('prohibited');
    expect(lawOn(salicylate, { category: '5D' })?.verdict).toBe('prohibited');
  });

  it('begins on the day that the rule names', () => {
    const retinol: Contribution = { name: 'Retinol', percent: 0.1 };
    expect(lawOn(retinol, { date: '2025-10-31' })).toBeUndefined();
    expect(lawOn(retinol, { date: '2025-11-01' })).toMatchObject({ verdict: 'over', limitPercent: 0.05 });
  });

  it('differs by market: Great Britain has no entry for pinene, and Northern Ireland follows the EU', () => {
    const pinene: Contribution[] = [{ name: 'alpha-Pinene', percent: 0.1 }];
    const wordsIn = (market: 'EU' | 'NI' | 'GB') =>
      judge(pinene, { market }).verdicts.map(({ verdict }) => verdict);
    expect(wordsIn('EU')).toEqual(['unknown']);
    expect(wordsIn('NI')).toEqual(['unknown']);
    expect(wordsIn('GB')).toEqual(['no-rule']);
  });

  it('shows what came from memory', () => {
    expect(lawOn({ name: 'Methyl eugenol', percent: 0.0001 }, { market: 'GB' })?.confidence).toBe('memory');
  });

  it('judges single parabens and their mixture', () => {
    const parabens = (methyl: number, ethyl: number) =>
      judge([
        { name: 'Methylparaben', percent: methyl },
        { name: 'Ethylparaben', percent: ethyl },
      ]).verdicts.find(({ kind }) => kind === 'law');
    expect(parabens(0.4, 0.4)?.verdict).toBe('within');
    expect(parabens(0.41, 0.1)).toMatchObject({
      verdict: 'unknown',
      reason: 'counted-as-other',
      percent: 0.41,
    });
  });

  it('counts an acid as itself, and is unknown where a salt may count for less than was put in', () => {
    expect(lawOn({ name: 'Benzoic acid', percent: 0.5 })?.verdict).toBe('within');
    expect(lawOn({ name: 'Benzoic acid', percent: 0.51 })?.verdict).toBe('over');
    expect(lawOn({ name: 'Sodium Benzoate', percent: 0.5 })?.verdict).toBe('within');
    expect(lawOn({ name: 'Sodium Benzoate', percent: 0.51 })).toMatchObject({
      verdict: 'unknown',
      reason: 'counted-as-other',
    });
  });
});

describe('what a composition cannot answer', () => {
  it('asks for the certificate where the raw material is limited', () => {
    expect(judge([{ name: 'Limonene', percent: 0.3 }]).verdicts).toMatchObject([
      {
        verdict: 'unknown',
        reason: 'needs-certificate',
        limitValue: 20,
        limitUnit: 'mmol-per-litre',
        asWhat: 'peroxide value',
      },
    ]);
  });

  it('is unknown where a limit exists but its figure is not known', () => {
    expect(lawOn({ name: 'Retinol', percent: 0.01 }, { market: 'GB' })).toMatchObject({
      verdict: 'unknown',
      reason: 'value-not-known',
    });
  });

  it('is unknown where the entry limits products and names none like this', () => {
    expect(lawOn({ name: 'Kojic Acid', percent: 0.1 })).toMatchObject({
      verdict: 'unknown',
      reason: 'use-not-covered',
    });
    expect(lawOn({ name: 'Kojic Acid', percent: 0.1 }, { category: '5B' })?.verdict).toBe('within');
  });

  it('is unknown for a shared number, in law as in Standard', () => {
    const reasons = (cas: string) =>
      judge([{ name: 'from the supplier', cas, percent: 0.1 }]).verdicts.map(({ kind, reason }) => [
        kind,
        reason,
      ]);
    expect(reasons('84603-73-6')).toEqual([['law', 'shared-cas']]);
    expect(reasons('8007-75-8')).toEqual([['ifra', 'shared-cas']]);
  });

  it('lists what has no rule, and does not call it within', () => {
    expect(judge([{ name: 'Butyrospermum Parkii Butter', percent: 60 }])).toEqual({
      verdicts: [
        {
          name: 'Butyrospermum Parkii Butter',
          percent: 60,
          members: ['Butyrospermum Parkii Butter'],
          verdict: 'no-rule',
        },
      ],
      decidedBy: null,
    });
  });

  it('names the nitrosating agent rule only where the formula holds one', () => {
    const mandarin: Contribution = { name: 'Methyl N-methylanthranilate', percent: 0.05 };
    expect(lawOn(mandarin)?.verdict).toBe('within');
    expect(judge([mandarin, { name: 'Sodium Nitrite', percent: 0.1 }]).verdicts[0]?.verdict).toBe(
      'prohibited',
    );
  });
});

describe('every rule of law with a figure of its own', () => {
  const figured = restrictedSubstances.flatMap((row) =>
    row.rules.flatMap((rule) => {
      const { value, unit, asWhat = 'cumin oil', quantity, basis } = rule;
      const isComparable = COUNTED_AS_PUT_IN.has(asWhat) || LESS_THAN_PUT_IN.has(asWhat);
      if (typeof value !== 'number' || quantity !== 'max' || basis !== undefined || !isComparable) return [];
      const percent = unit === 'mg-per-kg' ? value / 10_000 : value;
      return unit === 'kda' || percent >= 100 ? [] : [{ row, rule, percent }];
    }),
  );

  it('finds them', () => {
    expect(figured.length).toBeGreaterThan(200);
  });

  it('lets nothing above its figure pass as within', () => {
    for (const { row, rule, percent } of figured) {
      const answer = judgeLimits(tables, {
        market: rule.markets[0] ?? 'EU',
        use: rule.use ?? 'leave-on',
        category: '5A',
        date: '2026-11-25',
        bodyPart: rule.bodyPart ?? 'body',
        ...(rule.productType !== undefined && { productType: rule.productType }),
        ...(rule.maxAgeMonths !== undefined && { minAgeMonths: rule.maxAgeMonths - 1 }),
        contributions: [
          {
            name: row.name,
            percent: percent * (1 + 1e-9),
            ...(row.origin !== undefined && { origin: row.origin }),
          },
        ],
      });
      const words = answer.verdicts.filter(({ kind }) => kind === 'law').map(({ verdict }) => verdict);
      const isBroken = words.some((word) => word === 'over' || word === 'prohibited' || word === 'unknown');
      expect([rule.id, isBroken]).toEqual([rule.id, true]);
    }
  });
});
