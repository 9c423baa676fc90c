import { describe, expect, it } from 'vitest';
import { type JudgedEffect, judgeEffect, SERIOUS_MARKS } from './judge-effect.ts';

const codes = (more: Partial<JudgedEffect>) =>
  judgeEffect({ kind: 'skin-reaction', effect: 'undesirable', marks: [], isLookedInto: false, ...more }).map(
    ({ code }) => code,
  );

describe('judgeEffect', () => {
  it('takes a skin reaction as an undesirable effect', () => {
    expect(codes({})).toEqual([]);
  });

  // Article 2(1)(p) names six: each of them by itself makes the effect serious.
  it('is serious with any one of the six marks, and with nothing else', () => {
    expect(SERIOUS_MARKS).toHaveLength(6);
    for (const mark of SERIOUS_MARKS) {
      expect(codes({ effect: 'serious', marks: [mark] })).toEqual([]);
      expect(codes({ effect: 'undesirable', marks: [mark] })).toEqual(['effect-is-serious']);
    }
    expect(codes({ effect: 'serious' })).toEqual(['serious-without-mark']);
  });

  it('counts health until somebody has looked into it', () => {
    expect(codes({ effect: 'none' })).toEqual(['health-effect-counts']);
    expect(codes({ effect: 'none', isLookedInto: true })).toEqual([]);
  });

  it('lets a leaking lid be none', () => {
    expect(codes({ kind: 'packaging', effect: 'none' })).toEqual([]);
  });
});
