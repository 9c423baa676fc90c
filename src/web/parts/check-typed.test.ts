import { describe, expect, it } from 'vitest';
import { checkTyped } from './check-typed.ts';

const codeOf = (...asked: Parameters<typeof checkTyped>) => checkTyped(...asked)?.code;

describe('what is wrong with what was typed, once the field is left', () => {
  it('is nothing where it can be read', () => {
    expect(codeOf('whole', '1 000', 'units')).toBeUndefined();
    expect(codeOf('decimal', '5.5', 'grams', 'g')).toBeUndefined();
  });

  it('is nothing yet where nothing was typed', () => {
    expect(codeOf('whole', ' ', 'units')).toBeUndefined();
  });

  it('is nothing at nought, and a count or a mass below it', () => {
    expect(codeOf('whole', '0', 'units')).toBeUndefined();
    expect(codeOf('whole', '-1', 'units')).toBe('count-negative');
    expect(codeOf('decimal', '0', 'grams', 'g')).toBeUndefined();
    expect(codeOf('decimal', '-0.01', 'grams', 'g')).toBe('mass-negative');
  });

  it('lets a temperature lie below nought', () => {
    expect(codeOf('decimal', '-18', 'celsius', '°C')).toBeUndefined();
  });

  it('is a comma, a word, a part of a tin', () => {
    expect(codeOf('decimal', '5,5', 'grams', 'g')).toBe('comma-for-point');
    expect(codeOf('whole', '5,5', 'units')).toBe('comma-for-point');
    expect(codeOf('whole', 'abc', 'units')).toBeDefined();
    expect(codeOf('whole', '5.5', 'units')).toBe('not-a-whole-number');
  });
});
