import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { judgeAir } from './judge-air.ts';

/** A tin of 60 ml to its brim, 35 g on its label. */
const tin = { brimMl: '60', headspaceFraction: '0', declaredGrams: '35', aimGrams: '36' } as const;
const air = (gramsPerMl: readonly string[], more: object = {}, of: object = {}) =>
  must(
    judgeAir({ ...tin, ...of }, { gramsPerMl, gramsPerMlBefore: null, unwhippedGramsPerMl: null, ...more }),
  );

describe('whether it takes more air', () => {
  it('whips on while there is room, and tells the density at which to stop', () => {
    const found = air(['0.7']);
    expect(found).toMatchObject({ verdict: 'more', isShortOfAim: false });
    expect(found.takesGrams.toFixed()).toBe('42');
    expect(found.leastGramsPerMl.toFixed()).toBe('0.6');
    expect(found.fullness.toFixed(4)).toBe('0.8571');
  });

  it('stops within 5 % above the aim: on it and a hair off', () => {
    expect(air(['0.63']).verdict).toBe('stop');
    expect(air(['0.630001']).verdict).toBe('more');
  });

  it('is too much as soon as the label does not go in, exactly', () => {
    // Of three cups the mean has no end: a third of a gram in a millilitre, and 3 ml take 1 g.
    const third = { brimMl: '3', declaredGrams: '1', aimGrams: '1' };
    expect(air(['0.3', '0.3', '0.4'], {}, third).verdict).toBe('stop');
    expect(air(['0.3', '0.3', '0.399999'], {}, third).verdict).toBe('too-much');
  });

  it('says when the label goes in and the aim does not', () => {
    expect(air(['0.59'])).toMatchObject({ verdict: 'stop', isShortOfAim: true });
  });

  it('stops where another round like the last would leave less than the aim', () => {
    // From 0.9 to 0.7 in a round: the next leads to 0.5444, and 32.67 g go in.
    const found = air(['0.7'], { gramsPerMlBefore: '0.9' });
    expect(found.verdict).toBe('stop');
    expect(found.takesAfterNext?.toFixed(2)).toBe('32.67');
    expect(air(['0.7'], { gramsPerMlBefore: '0.75' }).verdict).toBe('more');
    // Denser than before: no round makes it so, and the last tells nothing.
    expect(air(['0.7'], { gramsPerMlBefore: '0.6' }).verdict).toBe('more');
  });

  it('keeps the room under the lid free', () => {
    expect(air(['0.7'], {}, { headspaceFraction: '0.1' }).takesGrams.toFixed()).toBe('37.8');
  });

  /** University of Guelph, ice cream technology, overrun calculations: 1.1 g/ml whipped to 0.55 has grown by 100 %. */
  it('tells the overrun and the largest that still makes the label', () => {
    const found = air(['0.55'], { unwhippedGramsPerMl: '1.1' }, { declaredGrams: '33', aimGrams: '33' });
    expect(found.overrunPercent?.toFixed()).toBe('100');
    expect(found.largestOverrunPercent?.toFixed()).toBe('100');
    expect(found.verdict).toBe('stop');
    expect(air(['0.55'], { unwhippedGramsPerMl: '0.56' }).largestOverrunPercent).toBeNull();
  });

  it('refuses no cup, a tin of nothing and a lid that takes it all', () => {
    const found = judgeAir(
      { ...tin, brimMl: '0', headspaceFraction: '1' },
      { gramsPerMl: [], gramsPerMlBefore: null, unwhippedGramsPerMl: null },
    );
    expect(!found.ok && found.problems.map((each) => each.where)).toEqual([
      'gramsPerMl',
      'headspaceFraction',
      'brimMl',
    ]);
  });
});
