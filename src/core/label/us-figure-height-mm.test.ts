import { describe, expect, it } from 'vitest';
import { usPanelFigureHeights } from '../../reference/index.ts';
import { exact } from '../quantity/index.ts';
import { findUsFigureHeightMm } from './us-figure-height-mm.ts';

const heightOf = (squareInch: number) =>
  findUsFigureHeightMm(exact(squareInch).times('645.16'), usPanelFigureHeights);

describe('the height of net contents in the United States', () => {
  it('goes by the area of the panel, each band up to and with its end', () => {
    // 21 CFR 701.13 in summaries: 1/16, 1/8, 3/16, 1/4, 1/2 inch; the last step from memory.
    expect(heightOf(5)).toBe(1.5875);
    expect(heightOf(5.001)).toBe(3.175);
    expect(heightOf(25)).toBe(3.175);
    expect(heightOf(25.001)).toBe(4.7625);
    expect(heightOf(100)).toBe(4.7625);
    expect(heightOf(100.001)).toBe(6.35);
    expect(heightOf(400.001)).toBe(12.7);
  });

  it('has none for no panel', () => {
    expect(heightOf(0)).toBeUndefined();
  });
});
