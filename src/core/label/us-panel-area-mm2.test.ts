import { describe, expect, it } from 'vitest';
import { usPanelFigureHeights } from '../../reference/index.ts';
import { findUsFigureHeightMm } from './us-figure-height-mm.ts';
import { type Panel, usPanelAreaMm2 } from './us-panel-area-mm2.ts';

const heightOf = (panel: Panel) => findUsFigureHeightMm(usPanelAreaMm2(panel), usPanelFigureHeights);

describe('the area of the panel that a buyer sees first', () => {
  // 21 CFR 701.13, 5 square inches are 3225.8 square millimetres; 0.4 x 129.032 x 62.5 is more than that in doubles.
  it('is exact at the end of a band: 40 % of a strip that comes to five square inches, and a hair more', () => {
    const strip = { shape: 'wrap', circumferenceMm: 129.032, heightMm: 62.5 } as const;
    expect(usPanelAreaMm2(strip).toFixed()).toBe('3225.8');
    expect(heightOf(strip)).toBe(1.5875);
    expect(heightOf({ ...strip, heightMm: 62.5001 })).toBe(3.175);
  });

  it('is all of a face and of a round lid', () => {
    expect(usPanelAreaMm2({ shape: 'rectangle', widthMm: 50.8, heightMm: 63.5 }).toFixed()).toBe('3225.8');
    // Pi / 4 x 62 mm squared.
    expect(usPanelAreaMm2({ shape: 'round', diameterMm: 62 }).toNumber()).toBeCloseTo(3019.0705, 4);
  });
});
