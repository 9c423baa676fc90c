import { describe, expect, it } from 'vitest';
import { sayHere } from '../../parts/say-here.ts';
import { judgeTried } from './judge-tried.ts';

const line = (grams: string) => ({
  stage: 'Whip',
  itemKind: 'material' as const,
  itemId: 'cedar',
  itemName: 'Cedarwood oil',
  grams,
  percent: '',
});
const codeOf = (grams: string) => judgeTried([line(grams)])[0]?.code;

describe('an amount that is tried', () => {
  it('can be judged as a number of grams above nought', () => {
    expect(judgeTried([line('6'), line('1 000.5'), line('0.000001')])).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it.each([
    ['abc', 'not-a-number'],
    ['1e5', 'not-a-number'],
    ['', 'number-missing'],
    ['6,5', 'comma-for-point'],
    ['-3', 'mass-negative'],
    ['0', 'mass-zero'],
    ['0.0000001', 'mass-too-fine'],
  ])('cannot be judged as %j', (typed, code) => {
    expect(codeOf(typed)).toBe(code);
  });

  it('is told of by the name of its material, at its own line', () => {
    const [first, second] = judgeTried([line('900'), line('abc')]);
    expect(first).toBeUndefined();
    expect(second?.where).toBe('details.lines[1].grams');
    expect(second && sayHere(second, 'Cedarwood oil').says).toBe(
      'Cedarwood oil is “abc”, which is not a number.',
    );
  });
});
