import { describe, expect, it } from 'vitest';
import { judgePosition } from './judge-position.ts';

const asked = { targetUg: 500, lowUg: 490, askedAfter: null };
const weighing = (ug: number, seq: number, more: { isPart?: boolean; endedSeq?: number } = {}) => ({
  ug,
  seq,
  isPart: false,
  endedSeq: null,
  ...more,
});

describe('what is done at a position of a batch', () => {
  it('is all of it after one weighing, whatever that was', () => {
    expect(judgePosition([weighing(497, 1)], asked)).toEqual({ inUg: 497, leftUg: 0, isDone: true });
    expect(judgePosition([weighing(300, 1)], asked)).toEqual({ inUg: 300, leftUg: 0, isDone: true });
  });

  it('is open while nothing, or only a part, is in', () => {
    expect(judgePosition([], asked)).toEqual({ inUg: 0, leftUg: 500, isDone: false });
    expect(judgePosition([weighing(300, 1, { isPart: true })], asked)).toEqual({
      inUg: 300,
      leftUg: 200,
      isDone: false,
    });
    const both = [weighing(300, 1, { isPart: true }), weighing(200, 2)];
    expect(judgePosition(both, asked)).toEqual({ inUg: 500, leftUg: 0, isDone: true });
  });

  it('is over where somebody says that this is all there is', () => {
    const last = weighing(300, 1, { isPart: true, endedSeq: 2 });
    expect(judgePosition([last], asked)).toEqual({ inUg: 300, leftUg: 0, isDone: true });
  });

  it('is open again where more is asked for later, from below the lower end of the new band only', () => {
    const later = { targetUg: 510, lowUg: 500, askedAfter: 5 };
    expect(judgePosition([weighing(499, 1)], later)).toEqual({ inUg: 499, leftUg: 11, isDone: false });
    expect(judgePosition([weighing(500, 1)], later)).toEqual({ inUg: 500, leftUg: 0, isDone: true });
    expect(judgePosition([weighing(499, 1), weighing(5, 6)], later).isDone).toBe(true);
  });

  it('is done where less is asked for later than the parts that are in', () => {
    const later = { targetUg: 300, lowUg: 294, askedAfter: 5 };
    expect(judgePosition([weighing(300, 1, { isPart: true })], later).isDone).toBe(true);
  });

  it('is over where that is said again after more was asked for, and only then', () => {
    const later = { targetUg: 510, lowUg: 500, askedAfter: 5 };
    const before = weighing(300, 1, { isPart: true, endedSeq: 4 });
    expect(judgePosition([before], later)).toEqual({ inUg: 300, leftUg: 210, isDone: false });
    expect(judgePosition([{ ...before, endedSeq: 6 }], later)).toEqual({
      inUg: 300,
      leftUg: 0,
      isDone: true,
    });
    expect(judgePosition([weighing(300, 1, { endedSeq: 6 })], later).isDone).toBe(true);
  });

  it('never asks for less than nothing', () => {
    expect(judgePosition([weighing(600, 1, { isPart: true })], asked).leftUg).toBe(0);
  });
});
