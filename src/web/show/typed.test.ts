import { describe, expect, it } from 'vitest';
import { readWhole } from './read-whole.ts';
import { typedDecimal, typedDecimalOrNull } from './typed-decimal.ts';

describe('readWhole', () => {
  it('reads counted pieces, with or without spaces between thousands', () => {
    expect(readWhole('14', 'pieces')).toEqual({ ok: true, value: 14 });
    expect(readWhole(' 1 200 ', 'pieces')).toEqual({ ok: true, value: 1200 });
  });

  it('takes twelve point nought as twelve', () => {
    expect(readWhole('12.0', 'pieces')).toEqual({ ok: true, value: 12 });
  });

  it('refuses half a piece and says which field', () => {
    const read = readWhole('2.5', 'lines[0].units');
    expect(read).toMatchObject({
      ok: false,
      problems: [{ code: 'not-a-whole-number', where: 'lines[0].units' }],
    });
  });

  it('does not guess at a comma, and asks for digits only', () => {
    expect(readWhole('1,200', 'pieces')).toMatchObject({
      ok: false,
      problems: [{ code: 'not-a-whole-number' }],
    });
  });
});

describe('typedDecimal', () => {
  it('takes spaces between thousands out and keeps every digit', () => {
    expect(typedDecimal('1 200.500')).toBe('1200.5');
    expect(typedDecimal('0.000001')).toBe('0.000001');
  });

  it('passes on what it cannot read, so that the refusal names what was typed', () => {
    expect(typedDecimal('12,5')).toBe('12,5');
    expect(typedDecimal('a few')).toBe('a few');
  });

  it('tells nothing typed from nought', () => {
    expect(typedDecimalOrNull('  ')).toBeNull();
    expect(typedDecimalOrNull('0')).toBe('0');
  });
});
