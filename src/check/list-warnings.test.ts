import { describe, expect, it } from 'vitest';
import { labelLawOf } from '../catalogue/index.ts';
import type { Market } from '../contract/index.ts';
import { composeLabelText, type LabelElement } from '../core/label/index.ts';
import { must } from '../core/problem.ts';
import type { RangedContribution } from '../core/safety/index.ts';
import { restrictedSubstances } from '../reference/index.ts';
import type { Checked, OpenedRevision } from './checked.ts';
import { judgeFormula } from './judge-formula.ts';
import { listWarnings } from './list-warnings.ts';

/** Fixed sentences of Annex III, column i, as the export of 25 December 2025 has them (read; Great Britain's talc from memory). */
const UNDER_3 = 'Not to be used for children under 3 years of age';
const VITAMIN_A = 'Contains Vitamin A. Consider your daily intake before use.';
const POWDER = "Keep powder away from children's nose and mouth";

const part = (name: string, mostPercent?: string): RangedContribution => ({
  name,
  origin: 'added',
  fromMaterials: [name],
  confidence: 'supplier',
  ...(mostPercent !== undefined && { mostPercent }),
});

const BUTTER = { use: 'leave-on', category: '5A', bodyPart: 'body', productType: 'body-lotion' };

const check = (market: Market, contributions: readonly RangedContribution[], details: object = {}): Checked =>
  judgeFormula({
    opened: {
      revision: { id: 'r', number: 1 },
      formula: { id: 'f', name: 'Butter', kind: 'mixture' },
      details: { ...BUTTER, minAgeMonths: null, ...details },
      baseIds: [],
      expanded: { materials: [] },
      materials: new Map(),
      kinds: [],
      contributions,
    } as unknown as OpenedRevision,
    markets: [market],
    today: '2026-11-26',
    reports: [],
    decisions: [],
  });

/** The element as the label of a product would have it, with these words of the maker. */
function precautionsOf(market: Market, checked: Checked, text: string): LabelElement | undefined {
  const label = composeLabelText(
    {
      market,
      placedOn: '2026-11-26',
      productName: 'Butter',
      functionText: 'Body butter',
      declaredGrams: '35',
      ingredients: [{ name: 'Helianthus Annuus Seed Oil', percent: '100', materialName: 'Oil' }],
      allergens: { named: [], undecided: [] },
      batchNumber: 'B-1',
      durability: null,
      precautions: { text, required: listWarnings(checked) },
      responsible: { name: 'Bench', address: '1 Lane, Testham TT1 1TT', contact: 'bench@example.org' },
      madeIn: { country: 'GB', isNorthernIreland: false },
    },
    labelLawOf(market),
  );
  return must(label).elements.find(({ element }) => element === 'precautions');
}

describe.each(['EU', 'NI', 'GB'] as const)('a fixed warning in %s', (market) => {
  const salicylic = () => check(market, [part('Salicylic Acid', '0.5')]);

  it('comes from the composition to the label, which lacks it until it is written there', () => {
    expect(listWarnings(salicylic())).toEqual([UNDER_3]);
    expect(precautionsOf(market, salicylic(), 'For outward use only.')).toMatchObject({
      state: 'missing',
      reason: { code: 'label-precautions-missing', parameters: { lacking: UNDER_3 } },
    });
    const written = `For outward use only.\n${UNDER_3.toUpperCase()}.`;
    expect(precautionsOf(market, salicylic(), written)).toMatchObject({ state: 'there' });
  });

  it('is asked for where the amount is over the limit or not known as well', () => {
    expect(listWarnings(check(market, [part('Salicylic Acid', '0.51')]))).toEqual([UNDER_3]);
    expect(listWarnings(check(market, [part('Salicylic Acid')]))).toEqual([UNDER_3]);
  });

  it('is asked for by the one use of several that has it', () => {
    const powder = { use: 'leave-on', category: '10B', bodyPart: '', productType: 'powder' };
    const talc = [part('Talc', '10')];
    const baby = { minAgeMonths: 0 };
    expect(listWarnings(check(market, talc, baby))).toEqual([]);
    expect(listWarnings(check(market, talc, { ...baby, ...powder }))).toEqual([POWDER]);
    expect(listWarnings(check(market, talc, { ...baby, alsoUsedAs: [powder] }))).toEqual([POWDER]);
  });

  it('is not asked for without the substance', () => {
    expect(listWarnings(check(market, [part('Helianthus Annuus Seed Oil', '100')]))).toEqual([]);
    expect(listWarnings(check(market, [part('Salicylic Acid', '0')]))).toEqual([]);
  });
});

describe('warnings by market and use', () => {
  it('of vitamin A are asked for in the Union and Northern Ireland; for Great Britain its rule is not known', () => {
    const retinol = (market: Market) => listWarnings(check(market, [part('Retinol', '0.01')]));
    expect(retinol('EU')).toEqual([VITAMIN_A]);
    expect(retinol('NI')).toEqual([VITAMIN_A]);
    expect(retinol('GB')).toEqual([]);
    const verdicts = check('GB', [part('Retinol', '0.01')]).groups[0]?.answer.markets[0]?.verdicts;
    expect(verdicts?.some(({ verdict, kind }) => kind === 'law' && verdict === 'unknown')).toBe(true);
  });

  it('of mouthwash stand although toothpaste has the same limit', () => {
    const mouth = { use: 'rinse-off', category: '6', bodyPart: 'oral', productType: '' };
    expect(listWarnings(check('EU', [part('Hexyl Salicylate', '0.0005')], mouth))).toEqual([UNDER_3]);
  });

  it('of the United States is the one of a product that nobody has substantiated: the tables hold no federal list', () => {
    const american = check('US', [part('Salicylic Acid', '0.5')]);
    expect(listWarnings(american)).toEqual([]);
    expect(precautionsOf('US', american, '')).toMatchObject({ state: 'not-needed' });
  });

  it('differ for no substance within one market, so that one is enough for a row', () => {
    for (const { rules } of restrictedSubstances)
      for (const market of ['EU', 'NI', 'GB'] as const) {
        const texts = rules
          .filter((rule) => rule.markets.includes(market))
          .flatMap(({ warning }) => warning ?? []);
        expect(new Set(texts).size).toBeLessThanOrEqual(1);
      }
  });
});
