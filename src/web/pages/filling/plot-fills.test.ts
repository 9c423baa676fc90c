import { describe, expect, it } from 'vitest';
import { plotFills } from './plot-fills.ts';

describe('plotFills', () => {
  it('draws heavier tins higher and the marks between', () => {
    const plot = plotFills([34, 36], [35]);
    expect(plot.dots[1]?.y).toBeLessThan(plot.lines[0] ?? 0);
    expect(plot.dots[0]?.y).toBeGreaterThan(plot.lines[0] ?? 0);
  });

  it('keeps one tin on its mark inside the picture', () => {
    const plot = plotFills([35], [35]);
    expect(plot.dots[0]?.y).toBe(plot.lines[0]);
    expect(plot.dots[0]?.y).toBeLessThan(plot.height);
  });
});
