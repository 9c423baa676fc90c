import { describe, expect, it } from 'vitest';
import { insetRegion, outlinePath } from './outline.ts';

describe('insetRegion', () => {
  // 3-4-5 triangle: in a circle of radius 50, a chord 30 from the centre is 80 long.
  it('measures a chord of a circle', () => {
    const region = insetRegion({ shape: 'round', diameterMm: 104 }, 2);
    expect(region.reachOf(22, 60)).toEqual({ left: 12, right: 92 });
    expect(region.reachOf(44, 82)).toEqual({ left: 12, right: 92 });
  });

  it('gives a rectangle the same width all the way down', () => {
    const region = insetRegion({ shape: 'rectangle', widthMm: 80, heightMm: 50 }, 2);
    expect(region.reachOf(2, 10)).toEqual({ left: 2, right: 78 });
    expect(region.reachOf(40, 48)).toEqual({ left: 2, right: 78 });
  });

  // The corner of a square in a quarter circle of radius 10: 10 (1 - 1/sqrt 2) = 2.93 from either side.
  it('keeps a rectangle with rounded corners clear of them, and no further than needed', () => {
    const region = insetRegion({ shape: 'rectangle', widthMm: 80, heightMm: 50, cornerRadiusMm: 12 }, 2);
    expect(region.topMm).toBeCloseTo(2 + 2.929, 3);
    expect(region.reachOf(region.topMm, 20)?.left).toBeCloseTo(2 + 2.929, 3);
    const sharp = insetRegion({ shape: 'rectangle', widthMm: 80, heightMm: 50, cornerRadiusMm: 2 }, 2);
    expect(sharp.topMm).toBe(2);
  });

  it('has no room outside', () => {
    const region = insetRegion({ shape: 'rectangle', widthMm: 80, heightMm: 50 }, 2);
    expect(region.reachOf(1.9, 10)).toBeNull();
    expect(region.reachOf(40, 48.1)).toBeNull();
    expect(insetRegion({ shape: 'round', diameterMm: 104 }, 2).reachOf(3, 10)).not.toBeNull();
    expect(insetRegion({ shape: 'round', diameterMm: 3 }, 2).reachOf(1, 2)).toBeNull();
  });
});

describe('outlinePath', () => {
  it('draws a circle of two arcs and a rectangle of four sides', () => {
    expect(outlinePath({ shape: 'round', diameterMm: 60 })).toBe('M0 30a30 30 0 1 0 60 0a30 30 0 1 0 -60 0Z');
    expect(outlinePath({ shape: 'rectangle', widthMm: 8, heightMm: 5 })).toBe('M0 0H8V5H0Z');
  });
});
