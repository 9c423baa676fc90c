import { describe, expect, it } from 'vitest';
import { showFigure } from './show-figure.ts';

describe('showFigure', () => {
  it('keeps the thousands of counts and decimal texts apart', () => {
    expect(showFigure(1200)).toBe('1\u00a0200');
    expect(showFigure('12345.60')).toBe('12\u00a0345.60');
  });

  it('leaves alone what was said already, and what is no number', () => {
    expect(showFigure('1\u00a0200\u00a0g')).toBe('1\u00a0200\u00a0g');
    expect(showFigure('nothing')).toBe('nothing');
    expect(showFigure(null)).toBeNull();
  });
});
