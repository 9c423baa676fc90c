import { describe, expect, it } from 'vitest';
import type { Addition } from './batch.ts';
import { judgeAdditionHere } from './judge-here.ts';

const screen = {
  itemName: 'Shea butter',
  lotId: 'lot-1',
  lotNumber: 'L-1',
  inGrams: '0',
  targetGrams: '100',
  lowGrams: '98',
  highGrams: '102',
} as unknown as Addition;
const body = { position: 0, lotId: 'lot-1', scaleId: null, actualGrams: '100' };
const codes = (more: object, on: Addition = screen) =>
  judgeAdditionHere(on)({ params: { id: 'b' }, body: { ...body, ...more } }).map(({ code }) => code);

describe('a weighing judged on the tablet', () => {
  it.each([
    ['97.999999', ['weight-outside-band']],
    ['98', []],
    ['102', []],
    ['102.000001', ['weight-outside-band']],
  ])('of %s g asks as the workshop would', (actualGrams, asked) => {
    expect(codes({ actualGrams })).toEqual(asked);
  });

  it('counts what is in already, and lets a part be less', () => {
    const begun = { ...screen, inGrams: '60' };
    expect(codes({ actualGrams: '40' }, begun)).toEqual([]);
    expect(codes({ actualGrams: '30' }, begun)).toEqual(['weight-outside-band']);
    expect(codes({ actualGrams: '30', isPart: true }, begun)).toEqual([]);
    expect(codes({ actualGrams: '43', isPart: true }, begun)).toEqual(['weight-outside-band']);
  });

  it('asks about another lot than planned', () => {
    expect(codes({ lotId: 'lot-2' })).toEqual(['lot-not-planned']);
  });

  it('asks nothing once it was said what was done differently', () => {
    expect(codes({ actualGrams: '5', deviation: { what: 'Less', why: 'Empty tub' } })).toEqual([]);
  });

  it('names what is no number', () => {
    expect(codes({ actualGrams: '1,5' })).toEqual(['comma-for-point']);
  });
});
