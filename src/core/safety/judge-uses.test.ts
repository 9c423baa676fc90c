import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { checkComposition } from './check-composition.ts';
import type { CompositionQuestion, RangedContribution } from './composition-check.ts';
import type { ProductKind } from './situations.ts';

const part = (name: string, mostPercent: number): RangedContribution => ({
  name,
  mostPercent,
  confidence: 'read',
  fromMaterials: ['An oil'],
  origin: 'natural',
});
const BODY: ProductKind = { use: 'leave-on', category: '5A', bodyPart: 'body', productType: 'body-lotion' };
const FACE: ProductKind = { use: 'leave-on', category: '5B', bodyPart: 'face', productType: 'face-cream' };
const BATH: ProductKind = { use: 'rinse-off', category: '9', bodyPart: 'body', productType: 'bath-product' };
const check = (
  contributions: readonly RangedContribution[],
  [own, ...alsoUsedAs]: readonly [ProductKind, ...ProductKind[]],
  rest: Partial<CompositionQuestion> = {},
) => {
  const [market] = checkComposition(boundSafetyTables(), {
    ...own,
    alsoUsedAs,
    markets: ['EU'],
    firstSupplied: '2026-11-25',
    contributions,
    ...rest,
  }).markets;
  if (!market) throw new Error('one market was asked for');
  return market;
};
const limitsOf = (market: ReturnType<typeof check>) =>
  market.verdicts.map(({ kind, verdict, limitPercent, forUse }) => [
    kind,
    verdict,
    limitPercent,
    forUse?.category,
  ]);

describe('a product of several uses', () => {
  // Benzyl benzoate: 4.3 % in category 5A, 0.21 % in 5B (IFRA Standards, 49th Amendment).
  const ofIfra = (percent: number, uses: readonly [ProductKind, ...ProductKind[]]) =>
    limitsOf(check([part('Benzyl Benzoate', percent)], uses)).filter(([kind]) => kind === 'ifra');

  it('is judged by the tightest of them, which is told', () => {
    expect(ofIfra(0.1, [BODY])).toEqual([['ifra', 'within', 4.3, undefined]]);
    expect(ofIfra(0.1, [BODY, FACE])).toEqual([['ifra', 'within', 0.21, '5B']]);
    expect(ofIfra(0.1, [FACE, BODY])).toEqual([['ifra', 'within', 0.21, '5B']]);
  });

  it('is over where one of its uses is, by the least bit, and within at that limit itself', () => {
    expect(ofIfra(0.21, [BODY, FACE])).toEqual([['ifra', 'within', 0.21, '5B']]);
    expect(ofIfra(0.210000001, [BODY, FACE])).toEqual([['ifra', 'over', 0.21, '5B']]);
  });

  it('has its law by use: 0.0002 % of methyl eugenol left on, 0.001 % rinsed off (Annex III, entry 102)', () => {
    const at = (percent: number, uses: readonly [ProductKind, ...ProductKind[]]) =>
      limitsOf(check([part('Methyl Eugenol', percent)], uses)).filter(([kind]) => kind === 'law');
    expect(at(0.0005, [BATH])).toEqual([['law', 'within', 0.001, undefined]]);
    expect(at(0.0005, [BATH, BODY])).toEqual([['law', 'over', 0.0002, '5A']]);
    expect(at(0.0005, [BODY, BATH])).toEqual([['law', 'over', 0.0002, '5A']]);
  });

  it('names by what stays on the skin in any of its uses: over 0.001 %, not 0.01 %', () => {
    const namesOf = (uses: readonly [ProductKind, ...ProductKind[]]) =>
      check([part('Geraniol', 0.005)], uses).naming.named.map(({ labelName }) => labelName);
    expect(namesOf([BATH])).toEqual([]);
    expect(namesOf([BATH, BODY])).toEqual(['Geraniol']);
  });

  it('tells no use where its uses are judged alike, and none of a product that has one', () => {
    const uses = limitsOf(check([part('Geraniol', 0.005)], [BODY, { ...BODY }])).map(([, , , use]) => use);
    expect(new Set(uses)).toEqual(new Set([undefined]));
    expect(check([part('Citral', 0.01)], [BODY]).verdicts.every((row) => row.forUse === undefined)).toBe(
      true,
    );
  });

  it('changes nothing by naming the same use twice', () => {
    const of = (uses: readonly [ProductKind, ...ProductKind[]]) =>
      check([part('Citral', 0.01), part('Methyl Eugenol', 0.0001), part('Cera Alba', 5)], uses);
    expect(of([FACE, { ...FACE }])).toEqual(of([FACE]));
  });
});
