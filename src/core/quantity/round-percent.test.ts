import { describe, expect, it } from 'vitest';
import { exact, toText } from './exact.ts';
import { roundPercent } from './round-percent.ts';

describe('a percentage for reading', () => {
  it.each([
    // 12 g of 1003 g is 1.19641... %.
    [exact(1200).div(1003), '1.196'],
    [exact('99.1'), '99.1'],
    [exact(100).div(3), '33.333'],
    [exact(200).div(3), '66.667'],
    [exact('1.1965'), '1.197'],
    [exact('0.012345'), '0.0123'],
    [exact('0.0002'), '0.0002'],
    [exact('99.9999'), '99.9999'],
    [exact('99.99995'), '99.99995'],
    [exact(100), '100'],
    [exact(0), '0'],
  ])('of %s reads %s', (percent, shown) => {
    expect(toText(roundPercent(percent))).toBe(shown);
  });
});
