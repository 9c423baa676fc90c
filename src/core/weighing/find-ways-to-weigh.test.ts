import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleTables } from '../../catalogue/index.ts';
import { exact, sumOf } from '../quantity/index.ts';
import { findWaysToWeigh } from './find-ways-to-weigh.ts';
import { leastOnScale } from './least-on-scales.ts';
import type { Scale } from './scale.ts';
import type { WayAddition } from './ways-to-weigh.ts';

const bench: Scale = { id: 'bench', name: 'Bench scale', capacityGrams: 5000, readabilityGrams: 1 };
const middle: Scale = { id: 'middle', name: 'Middle scale', capacityGrams: 2000, readabilityGrams: '0.1' };
const small: Scale = { id: 'small', name: 'Small scale', capacityGrams: 200, readabilityGrams: '0.01' };

const add = (key: string, grams: string, more: Partial<WayAddition> = {}): WayAddition => ({
  key,
  grams,
  relativeTolerance: '0.02',
  isScent: false,
  isCarrier: false,
  ...more,
});
const scent = (key: string, grams: string, relativeTolerance = '0.02') =>
  add(key, grams, { isScent: true, relativeTolerance });
const ways = (additions: readonly WayAddition[], scales: readonly Scale[] = [middle]) =>
  findWaysToWeigh({ batchGrams: sumOf(additions.map(({ grams }) => grams)), additions, scales }, scaleTables);

describe('ways to weigh what is too small', () => {
  it('has none where everything is weighed within its tolerance: just the smallest weight is enough', () => {
    // 2 x 0.41 x 0.1 / 0.02 = 4.1 g.
    expect(ways([add('butter', '495.9'), scent('orange', '4.1')])).toMatchObject({ hard: [] });
    expect(ways([add('butter', '495.9'), scent('orange', '4.09')]).hard).toHaveLength(1);
  });

  it('names a finer scale of the workshop, or the step that one would need', () => {
    const [one] = ways([add('butter', '498', { isCarrier: true }), scent('orange', '2')], [middle]).hard;
    // 2 x 0.02 / 0.82 = 0.0488 g: the next step that is made is 0.02 g.
    expect(one?.stepGrams.toFixed()).toBe('0.02');
    expect(one?.leastGrams?.toFixed()).toBe('4.1');
    expect(ways([add('butter', '498'), scent('orange', '2')], [middle, small]).hard).toEqual([]);
  });

  it('asks of a step of 1, 2 or 5 no more than is needed', () => {
    const stepFor = (grams: string) =>
      ways([add('butter', '100'), scent('x', grams, '0.82')], [{ ...middle, readabilityGrams: 50 }])
        .hard.find(({ key }) => key === 'x')
        ?.stepGrams.toFixed();
    expect(['1', '2', '5', '9', '10', '0.5', '0.49', '0.02'].map(stepFor)).toEqual([
      '1',
      '2',
      '5',
      '5',
      '10',
      '0.5',
      '0.2',
      '0.02',
    ]);
  });

  it('mixes the scents ahead, in whole batches, so that the smallest of them is weighable', () => {
    const { hard: two } = ways([add('butter', '489'), scent('orange', '6'), scent('clove', '0.5')]);
    // Least 4.1 g of clove: 8.2 batches, so nine: 54 g and 4.5 g.
    expect(two).toHaveLength(1);
    const blend = two[0]?.blend;
    expect(blend).toMatchObject({ keys: ['orange', 'clove'], batches: 9 });
    expect([blend?.totalGrams.toFixed(), blend?.perBatchGrams.toFixed()]).toEqual(['58.5', '6.5']);
    expect(blend?.grams.map(String)).toEqual(['54', '4.5']);
  });

  it('mixes nothing ahead where there is one scent, or where the blend itself is too small', () => {
    expect(ways([add('butter', '499'), scent('clove', '0.5')]).hard[0]?.blend).toBeNull();
    expect(ways([add('butter', '499'), scent('a', '1'), scent('b', '1')]).hard[0]?.blend).toBeNull();
    // The tightest of its oils decides how well the blend has to be weighed: 2 x 0.041 / 0.005 = 16.4 g.
    const tight = ways([add('butter', '480'), scent('a', '9'), scent('b', '1', '0.005')]).hard;
    expect(tight.find(({ key }) => key === 'b')?.blend).toBeNull();
  });

  it('says in which batch it could be weighed, and the smallest in which everything is', () => {
    const found = ways([add('butter', '496'), scent('orange', '3'), scent('clove', '1')]);
    expect(found.hard.map(({ largerBatchGrams }) => largerBatchGrams?.toFixed())).toEqual(['684', '2050']);
    expect(found.smallest?.batchGrams.toFixed()).toBe('2050');
  });

  it('names a batch below the planned one where that would do', () => {
    expect(ways([add('butter', '959'), scent('orange', '41')]).smallest?.batchGrams.toFixed()).toBe('100');
  });

  it('thins it with the largest carrier that has enough', () => {
    const [one] = ways([
      add('shea', '300'),
      add('sunflower', '150', { isCarrier: true }),
      add('jojoba', '3', { isCarrier: true, relativeTolerance: '0.05' }),
      add('tocopherol', '0.41'),
    ]).hard.filter(({ key }) => key === 'tocopherol');
    const premix = one?.premix;
    expect(premix).toMatchObject({ carrierKey: 'sunflower' });
    expect(
      [premix?.substanceGrams, premix?.carrierGrams, premix?.premixTotalGrams, premix?.portionGrams].map(
        String,
      ),
    ).toEqual(['4.1', '36.9', '41', '4.1']);
    expect(premix?.broughtGrams.toFixed()).toBe('3.69');
    expect(ways([add('shea', '300'), add('tocopherol', '0.41')]).hard[0]?.premix).toBeNull();
  });

  it('knows no way by weight where no scale is there', () => {
    expect(ways([add('butter', '100')], [])).toMatchObject({
      smallest: null,
      hard: [
        {
          leastGrams: null,
          largerBatchGrams: null,
          premix: null,
          stepGrams: expect.anything(),
          tooSmallScale: null,
          parts: null,
        },
      ],
    });
  });

  it('does not go below the smallest load of a class', () => {
    const verified: Scale = { ...small, accuracyClass: 'II', verificationIntervalGrams: '0.1' };
    // 50 e = 5 g, where the step alone would weigh 0.41 g within 2 %.
    expect(leastOnScale(verified, '0.02', scaleTables).toFixed()).toBe('5');
    expect(leastOnScale(small, '0.02', scaleTables).toFixed()).toBe('0.41');
  });

  it('is weighed in parts on the scale that does not hold it, where the one that does is too coarse', () => {
    const { hard, smallest } = ways([add('limited', '300', { relativeTolerance: '0.001' })], [bench, small]);
    // The small scale weighs 8.2 to 200 g within 0.1 %, the bench scale from 820 g.
    expect(hard).toMatchObject([{ tooSmallScale: small, parts: { scale: small, count: 2 }, premix: null }]);
    const parts = hard[0]?.parts;
    expect([parts?.partGrams, parts?.lastGrams].map(String)).toEqual(['150', '150']);
    // Two readings of 0.01 g, each half a step off: 0.01 g a part.
    expect([parts?.partErrorGrams, parts?.errorGrams].map(String)).toEqual(['0.01', '0.02']);
    expect([hard[0]?.leastGrams, hard[0]?.largerBatchGrams, smallest?.batchGrams].map(String)).toEqual([
      '820',
      '820',
      '9',
    ]);
    expect(ways([add('limited', '200', { relativeTolerance: '0.001' })], [bench, small]).hard).toEqual([]);
    expect(
      ways([add('limited', '200.01', { relativeTolerance: '0.001' })], [bench, small]).hard,
    ).toHaveLength(1);
    expect(ways([add('limited', '820', { relativeTolerance: '0.001' })], [bench, small]).hard).toEqual([]);
  });

  it('is weighed in as few parts as may be where no scale holds it; no larger batch helps', () => {
    const [one] = ways([add('butter', '12000')], [small, middle, bench]).hard;
    expect(one).toMatchObject({
      leastGrams: null,
      largerBatchGrams: null,
      parts: { scale: bench, count: 3 },
    });
    expect([one?.parts?.partGrams, one?.parts?.errorGrams].map(String)).toEqual(['4000', '3']);
  });

  it('is weighed in parts that the scale can show: what is left is the last', () => {
    const parts = ways([add('butter', '400.01')], [small]).hard[0]?.parts;
    expect([parts?.count, parts?.partGrams, parts?.lastGrams].map(String)).toEqual(['3', '133.34', '133.33']);
  });

  it('has no parts that are themselves too small for the scale', () => {
    // 82 g to 100 g within 1 %: two parts of 75 g are too small.
    const narrow: Scale = { ...bench, capacityGrams: 100 };
    const [one] = ways([add('butter', '150', { relativeTolerance: '0.01' })], [narrow]).hard;
    expect(one).toMatchObject({ parts: null, tooSmallScale: narrow });
    expect(ways([add('butter', '164', { relativeTolerance: '0.01' })], [narrow]).hard[0]?.parts?.count).toBe(
      2,
    );
  });

  it('names a smallest batch in parts where none is weighed at once', () => {
    const additions = [add('butter', '9995'), add('limited', '5', { relativeTolerance: '0.001' })];
    // 8.2 g of what is limited is a batch of 16.4 kg; the butter of that is more than any scale here holds.
    const { smallest } = ways(additions, [bench, small]);
    expect([smallest?.batchGrams.toFixed(), smallest?.isInParts]).toEqual(['16400', true]);
    expect(ways([add('butter', '9000'), add('scent', '1000')], [bench]).smallest?.isInParts).toBe(false);
  });

  it('leaves nothing too small in the smallest batch that it names but what it weighs in parts, and something just below it', () => {
    const additions = fc.array(
      fc.record({
        grams: fc.integer({ min: 1, max: 500_000 }).map((n) => (n / 1000).toFixed(3)),
        relativeTolerance: fc.constantFrom('0.001', '0.01', '0.02', '0.05'),
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(additions, (given) => {
        const wanted = given.map((each, index) => add(String(index), each.grams, each));
        const batchGrams = sumOf(wanted.map(({ grams }) => grams));
        const found = ways(wanted, [middle, small]).smallest;
        const least = found?.batchGrams ?? exact(0);
        const scaled = (to: typeof least) =>
          wanted.map((each) => ({ ...each, grams: to.times(each.grams).div(batchGrams) }));
        const left = ways(scaled(least), [middle, small]).hard;
        if (found?.isInParts) expect(left.map(({ parts }) => parts)).not.toContain(null);
        else expect(left).toEqual([]);
        if (least.gt(1)) expect(ways(scaled(least.minus('1.0001')), [middle, small]).hard).not.toEqual([]);
      }),
    );
  });
});
