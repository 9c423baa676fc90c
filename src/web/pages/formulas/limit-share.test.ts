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

  it('never reads as a full hundred what is a hair over, nor as over what is exactly on it', () => {
    expect(shareOfLimit('0.15', '0.15')).toBe('100');
    expect(shareOfLimit('0.150000001', '0.15')).toBe('100.1');
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
