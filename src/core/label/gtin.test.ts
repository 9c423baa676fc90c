import { describe, expect, it } from 'vitest';
import { gtinCheckDigit, readGtin } from './gtin.ts';

describe('gtinCheckDigit', () => {
  // GS1, "How to calculate a check digit manually": 629104150021 gives 3 (from memory).
  // GS1 Digital Link standard and the barcode writer's manual use 9506000134352 and 9521234543213.
  it.each([
    ['629104150021', 3],
    ['950600013435', 2],
    ['0952123454321', 3],
    ['9638507', 4],
  ])('of %s is %d', (digits, check) => {
    expect(gtinCheckDigit(digits)).toBe(check);
  });

  it('is 0 where the sum is a full ten', () => {
    expect(gtinCheckDigit('0000000')).toBe(0);
  });
});

describe('readGtin', () => {
  it('takes blanks and hyphens as people write them', () => {
    expect(readGtin('9 506000-134352', 'gtin')).toEqual({ ok: true, value: '9506000134352' });
  });

  it('notices each single wrong digit', () => {
    for (let place = 0; place < 13; place += 1) {
      const digits = [...'9506000134352'];
      digits[place] = String((Number(digits[place]) + 1) % 10);
      expect(readGtin(digits.join(''), 'gtin')).toMatchObject({
        ok: false,
        problems: [{ code: 'gtin-check-digit-wrong' }],
      });
    }
  });

  it('refuses what has letters, and lengths that no GTIN has', () => {
    for (const wrong of ['', '950600013435', '95060001343521', '95060001343X2', '123456789'])
      expect(readGtin(wrong, 'gtin').ok).toBe(false);
    expect(readGtin('123456789', 'code')).toMatchObject({
      problems: [{ code: 'gtin-wrong-length', where: 'code', found: '123456789' }],
    });
  });
});
