import { describe, expect, it } from 'vitest';
import { chooseName } from './choose-name.ts';

describe('the name of a material that is taken from the tables', () => {
  it('stays as it was typed', () => {
    expect(chooseName('Lavender oil', 'Lavender')).toBe('Lavender oil');
    expect(chooseName(' Bergamot ', 'Bergamot, expressed')).toBe('Bergamot');
  });

  it('is the table’s where only a beginning of it was typed, or nothing', () => {
    expect(chooseName('lav', 'Lavender')).toBe('Lavender');
    expect(chooseName('', 'Lavender')).toBe('Lavender');
  });
});
