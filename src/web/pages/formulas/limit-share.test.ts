import { describe, expect, it } from 'vitest';
import { closestFirst, shareOfLimit } from './limit-share.ts';

const row = (verdict: string, mostPercent: string, limitPercent: string | null) => ({
  verdict,
  mostPercent,
  limitPercent,
});

describe('limit share', () => {
  it('is the percent of the limit', () => {
    expect(shareOfLimit('0.118', '0.15')).toBe('78.7');
  });

  it('is rounded half up from the exact figures, so that the figures beside it give the same', () => {
    // 0.6 % of an oil that holds 38.0 + 9.2 %: 0.2832 of 0.38 is 74.526...
    expect(shareOfLimit('0.2832', '0.38')).toBe('74.5');
    expect(shareOfLimit('0.5555', '1')).toBe('55.6');
  });

  it('never reads as a full hundred what is a hair over, nor as over what is exactly on it', () => {
    expect(shareOfLimit('0.15', '0.15')).toBe('100');
    expect(shareOfLimit('0.150000001', '0.15')).toBe('100.000001');
    expect(shareOfLimit('0.149999999', '0.15')).toBe('99.999999');
    expect(shareOfLimit('0.1499', '0.15')).toBe('99.9');
  });

  it('puts what is over first and the closest next', () => {
    const rows = [
      row('unknown', '1', null),
      row('within', '0.5', null),
      row('within', '0.1', '1'),
      row('over', '2', '1'),
      row('within', '0.9', '1'),
    ];
    expect(closestFirst(rows).map((one) => one.mostPercent)).toEqual(['2', '0.9', '0.1', '0.5', '1']);
  });
});
