import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { type Addition, judgeAddition } from './judge-addition.ts';

const shea: Addition = { targetGrams: 250, actualGrams: 250, toleranceGrams: '2.5' };
const judge = (change: Partial<Addition>) => must(judgeAddition({ ...shea, ...change }));

describe('verdict of an addition', () => {
  it.each([
    ['250', 'inside', '0'],
    ['247.5', 'inside', '-2.5'],
    ['247.499', 'low', '-2.501'],
    ['252.5', 'inside', '2.5'],
    ['252.501', 'high', '2.501'],
  ])('%s g of 250 g within 2.5 g is %s', (actualGrams, verdict, difference) => {
    const found = judge({ actualGrams });
    expect([found.verdict, found.differenceGrams.toFixed()]).toEqual([verdict, difference]);
    expect([found.lowGrams.toFixed(), found.highGrams.toFixed()]).toEqual(['247.5', '252.5']);
  });

  it('is exact where binary arithmetic is not: 0.3 g is within 0.1 g of 0.2 g', () => {
    expect(0.3 - 0.2 <= 0.1).toBe(true);
    expect(0.8 - 0.7 <= 0.1).toBe(false);
    expect(judge({ targetGrams: 0.7, actualGrams: 0.8, toleranceGrams: 0.1 }).verdict).toBe('inside');
  });

  it('is held down by a limit, from above only', () => {
    expect(judge({ actualGrams: '250.001', mostGrams: 250 }).verdict).toBe('high');
    expect(judge({ actualGrams: '250', mostGrams: 250 }).verdict).toBe('inside');
    expect(judge({ actualGrams: '247.5', mostGrams: 250 }).verdict).toBe('inside');
  });

  it('has no band below nought', () => {
    expect(judge({ targetGrams: 1, actualGrams: 0.1, toleranceGrams: 2 }).lowGrams.toFixed()).toBe('0');
  });

  it.each([
    [{ actualGrams: 0 }, 'value-not-above', 'actualGrams'],
    [{ actualGrams: -3 }, 'value-not-above', 'actualGrams'],
    [{ targetGrams: 0 }, 'value-not-above', 'targetGrams'],
    [{ toleranceGrams: -1 }, 'mass-negative', 'toleranceGrams'],
  ])('refuses %j', (change, code, where) => {
    expect(judgeAddition({ ...shea, ...change })).toMatchObject({ ok: false, problems: [{ code, where }] });
  });
});
