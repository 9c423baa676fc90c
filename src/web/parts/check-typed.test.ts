import { describe, expect, it } from 'vitest';
import { checkTyped } from './check-typed.ts';
import { sayHere } from './say-here.ts';

const codeOf = (...asked: Parameters<typeof checkTyped>) => checkTyped(...asked)?.code;

describe('what is wrong with what was typed, once the field is left', () => {
  it('is nothing where it can be read', () => {
    expect(codeOf('whole', '1 000', 'units')).toBeUndefined();
    expect(codeOf('decimal', '5.5', 'grams', { unit: 'g' })).toBeUndefined();
  });

  it('is nothing yet where nothing was typed', () => {
    expect(codeOf('whole', ' ', 'units')).toBeUndefined();
  });

  it('is nothing at nought, and a count or a mass below it', () => {
    expect(codeOf('whole', '0', 'units')).toBeUndefined();
    expect(codeOf('whole', '-1', 'units')).toBe('count-negative');
    expect(codeOf('decimal', '0', 'grams', { unit: 'g' })).toBeUndefined();
    expect(codeOf('decimal', '-0.01', 'grams', { unit: 'g' })).toBe('mass-negative');
  });

  it('is a count below the least that is asked for, on both sides of it', () => {
    const least = (typed: string) => checkTyped('whole', typed, 'units', { least: 1 });
    expect(least('1')).toBeUndefined();
    expect(least('0')).toMatchObject({ code: 'count-below-least', found: '0', allowed: 1 });
    expect(least('-3')).toMatchObject({ code: 'count-negative', allowed: 1 });
  });

  it('is told in words of whole things, with the true least', () => {
    const told = (typed: string, least: number) => {
      const found = checkTyped('whole', typed, 'units', { least });
      return found && Object.values(sayHere(found, 'How many')).join(' ');
    };
    expect(told('5,5', 1)).toBe(
      'How many is \u201c5,5\u201d, which is not a whole number. Write digits only, without comma or point, such as 12; the least is 1.',
    );
    expect(told('-3', 1)).toBe('How many is -3, less than nothing. Give a whole number of 1 or more.');
    expect(told('-3', 0)).toBe('How many is -3, less than nothing. Give a whole number of nought or more.');
    expect(told('0', 1)).toBe('How many is 0; the least is 1. Give a whole number of 1 or more.');
  });

  it('lets a temperature lie below nought', () => {
    expect(codeOf('decimal', '-18', 'celsius', { unit: '°C' })).toBeUndefined();
  });

  it('is a comma, a word, a part of a tin', () => {
    expect(codeOf('decimal', '5,5', 'grams', { unit: 'g' })).toBe('comma-for-point');
    for (const typed of ['5,5', '100,5', 'abc', '1,000'])
      expect(codeOf('whole', typed, 'units')).toBe('not-a-whole-number');
    expect(codeOf('whole', '5.5', 'units')).toBe('not-a-whole-number');
  });
});
