import { describe, expect, it } from 'vitest';
import { exact } from '../quantity/index.ts';
import { findGramsToAdd, findWorstPercent, isWithinAtWorst, type WeighedPart } from './judge-worst-case.ts';

const part = (grams: string, errorGrams = '0'): WeighedPart => ({ grams, errorGrams });
const BASE_AND_SCENT = { limitPercent: '1', percentIn: ['0', '100'] };

describe('a batch as weighed, at the worst', () => {
  it('is within where the errors leave room', () => {
    expect(isWithinAtWorst([part('992', '0.5'), part('8', '0.05')], BASE_AND_SCENT)).toBe(true);
  });

  it('is within at the limit itself, and over by the least bit', () => {
    expect(isWithinAtWorst([part('990'), part('10')], BASE_AND_SCENT)).toBe(true);
    expect(isWithinAtWorst([part('990'), part('10.000001')], BASE_AND_SCENT)).toBe(false);
    expect(isWithinAtWorst([part('990'), part('10')], { ...BASE_AND_SCENT, isStrict: true })).toBe(false);
  });

  it('is over where only the errors bring it over, in either weighing', () => {
    // 1 % of 989.01 + 9.99 g is 9.99 g.
    expect(isWithinAtWorst([part('989.01'), part('9.99')], BASE_AND_SCENT)).toBe(true);
    expect(isWithinAtWorst([part('989.01', '0.01'), part('9.99')], BASE_AND_SCENT)).toBe(false);
    expect(isWithinAtWorst([part('989.01'), part('9.99', '0.001')], BASE_AND_SCENT)).toBe(false);
    // 1 g less base can be off where 99 g of room are there for each gram of scent: 9.9 + e = (990 + 9.9 - 1 + e) / 100.
    expect(isWithinAtWorst([part('990', '1'), part('9.9')], BASE_AND_SCENT)).toBe(true);
    expect(isWithinAtWorst([part('990', '9.9'), part('9.9')], BASE_AND_SCENT)).toBe(true);
    expect(isWithinAtWorst([part('990', '9.900001'), part('9.9')], BASE_AND_SCENT)).toBe(false);
  });

  it('shows the largest share that the errors leave possible', () => {
    const worst = findWorstPercent([part('990', '9.9'), part('9.9')], BASE_AND_SCENT);
    expect(worst.toString()).toBe('1');
    expect(findWorstPercent([part('90', '1'), part('10', '1')], BASE_AND_SCENT).toString()).toBe('11');
    expect(findWorstPercent([part('90'), part('10')], BASE_AND_SCENT).toString()).toBe('10');
  });

  it('agrees with the share that it shows, whatever the parts', () => {
    const parts = [part('500', '0.5'), part('300', '1'), part('12', '0.02'), part('7', '0.01')];
    const percentIn = ['0.1', '0.7', '40', '3'];
    const worst = findWorstPercent(parts, { limitPercent: '0', percentIn });
    const at = (limit: ReturnType<typeof exact>) => ({ limitPercent: limit, percentIn });
    expect(isWithinAtWorst(parts, at(worst.plus('1e-30')))).toBe(true);
    expect(isWithinAtWorst(parts, at(worst.minus('1e-30')))).toBe(false);
  });
});

describe('grams to add so that it is within at the worst', () => {
  const add = (parts: readonly WeighedPart[], percent = '0', errorGrams = '0', step = '0.1') =>
    findGramsToAdd(parts, BASE_AND_SCENT, { percent, errorGrams }, step)?.toString();

  it('are as many as the limit asks for', () => {
    // 12 g in 1,002 g: 1 % of 1,200 g, 198 g more.
    expect(add([part('990'), part('12')])).toBe('198');
  });

  it('are enough to the last step, and one step less is not', () => {
    const parts = [part('990', '0.5'), part('12', '0.03')];
    const grams = exact(add(parts, '0.2', '0.5') ?? '0');
    const isEnough = (more: ReturnType<typeof exact>) =>
      isWithinAtWorst([...parts, { grams: more, errorGrams: '0.5' }], {
        ...BASE_AND_SCENT,
        percentIn: ['0', '100', '0.2'],
      });
    expect(isEnough(grams)).toBe(true);
    expect(isEnough(grams.minus('0.1'))).toBe(false);
  });

  it('are one step more below a strict limit that they just reach', () => {
    const limit = { ...BASE_AND_SCENT, isStrict: true };
    const of = findGramsToAdd([part('990'), part('12')], limit, { percent: '0', errorGrams: '0' }, '0.1');
    expect(of?.toString()).toBe('198.1');
  });

  it('are none where it is within, and there are none where what is added is as rich as the limit', () => {
    expect(add([part('990'), part('10')])).toBe('0');
    expect(add([part('990'), part('12')], '1')).toBeUndefined();
    expect(add([part('990'), part('12')], '0.9999')).toBeDefined();
  });
});
