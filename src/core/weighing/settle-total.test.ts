import { describe, expect, it } from 'vitest';
import { exact } from '../quantity/index.ts';
import { type RoundedLine, settleTotal } from './settle-total.ts';

const line = (exactGrams: string, targetGrams: string, change: Partial<RoundedLine> = {}): RoundedLine => ({
  exactGrams: exact(exactGrams),
  targetGrams: exact(targetGrams),
  toleranceGrams: exact(exactGrams).times('0.01'),
  isLimited: false,
  stepGrams: exact('0.1'),
  capacityGrams: exact(2000),
  ...change,
});
const settle = (lines: RoundedLine[]) => settleTotal(lines).map((target) => target.toFixed());

describe('settling the total', () => {
  it('puts the difference on the line with the widest band', () => {
    expect(settle([line('100.04', '100'), line('500.04', '500'), line('50.04', '50')])).toEqual([
      '100',
      '500.1',
      '50',
    ]);
  });

  it('leaves a difference of less than half a step where it is, unless a limit holds', () => {
    expect(settle([line('500.04', '500')])).toEqual(['500']);
    expect(settle([line('500.04', '500'), line('1', '1', { isLimited: true })])).toEqual(['500.1', '1']);
  });

  it('takes nothing off when a limit holds and the total lies above', () => {
    expect(settle([line('499.96', '500'), line('1', '1', { isLimited: true })])).toEqual(['500', '1']);
  });

  it('never moves a limited line, a line without a scale, or a line out of its band', () => {
    expect(settle([line('500.04', '500', { isLimited: true }), line('3.35', '3.3')])).toEqual(['500', '3.3']);
    expect(settle([line('500.2', '500', { stepGrams: null })])).toEqual(['500']);
    expect(settle([line('5.04', '5'), line('1.04', '1', { isLimited: true })])).toEqual(['5', '1']);
  });

  it('never goes beyond the capacity of the scale', () => {
    expect(settle([line('500.05', '500', { capacityGrams: exact(500) })])).toEqual(['500']);
  });
});
