import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { type CupTest, fillByCup, judgeCup } from './judge-cup.ts';

const cup = (more: Partial<CupTest> = {}) =>
  judgeCup({ grossGrams: '155', tareGrams: '45', cupMl: '200', unwhippedGrams: null, ...more });

describe('the cup test', () => {
  it('finds density, overrun and what a tin takes', () => {
    const found = must(cup({ unwhippedGrams: '220' }));
    expect(found.netGrams.toFixed()).toBe('110');
    expect(found.densityGramsPerMl.toFixed()).toBe('0.55');
    // University of Guelph, overrun by weight of a fixed volume: (220 - 110) / 110 = 100 %; exact.
    expect(found.overrunPercent?.toFixed()).toBe('100');
    expect(must(fillByCup('60', found)).toFixed()).toBe('33');
  });

  it('knows no overrun where the cup was not weighed before whipping', () => {
    expect(must(cup()).overrunPercent).toBeNull();
  });

  it('takes a cup as heavy as before for a butter without air, and a hair more for a mistake', () => {
    expect(must(cup({ unwhippedGrams: '110' })).overrunPercent?.toFixed()).toBe('0');
    expect(cup({ unwhippedGrams: '109.99' })).toMatchObject({
      problems: [{ code: 'cup-lighter-before', where: 'unwhippedGrams' }],
    });
  });

  it('refuses a cup that alone weighs as much, and a cup that holds nothing', () => {
    expect(cup({ tareGrams: '155' })).toMatchObject({
      problems: [{ code: 'weighed-nothing', where: 'tareGrams' }],
    });
    expect(cup({ cupMl: '0' })).toMatchObject({ problems: [{ code: 'value-not-above', where: 'cupMl' }] });
  });
});
