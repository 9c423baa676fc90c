import { describe, expect, it } from 'vitest';
import { decodeLine, type LinePattern } from './decode-line.ts';

// Made-up lines of the usual kinds: number and unit; state, number and unit; fixed columns. Recorded from no scale.
const plain: LinePattern = {
  numberFrom: null,
  numberLength: null,
  unit: 'line',
  stableMark: '',
  movingMark: '',
};
const gramsOf = (line: string, change: Partial<LinePattern> = {}) =>
  decodeLine(line, { ...plain, ...change }).grams;

describe('a line of a scale', () => {
  it.each([
    ['   12.34 g', '12.34'],
    ['+  12.34g', '12.34'],
    ['-0.02 g', '-0.02'],
    ['1,250 kg', '1250'],
    ['0.4409 lb', '199.988875933'],
    ['1 oz', '28.349523125'],
    ['520', '520'],
    ['.5 g', '0.5'],
    ['N     500.0 g  ', '500'],
  ])('%j is %s g', (line, grams) => {
    expect(gramsOf(line)).toBe(grams);
  });

  it('is converted exactly, and says what was told', () => {
    expect(decodeLine('2.5 ozt', plain)).toEqual({
      grams: '77.758692',
      isStable: true,
      trouble: null,
      told: { value: '2.5', unit: 'ozt' },
    });
  });

  it('has its number where the pattern says', () => {
    const columns = { numberFrom: 7, numberLength: 8 };
    expect(gramsOf('ID01  00012.30g', columns)).toBe('12.3');
    expect(gramsOf('ID01  00012.30g')).toBe('12.3');
    expect(gramsOf('01  00012.30g')).toBe('1');
    expect(gramsOf('GS,12.3 g')).toBe('12.3');
  });

  it('is settled where its mark stands, or where none says that it moves', () => {
    const marked = { ...plain, stableMark: 'ST', movingMark: '' };
    expect(decodeLine('ST,GS,+ 12.30 g', marked)).toMatchObject({ grams: '12.3', isStable: true });
    expect(decodeLine('US,GS,+ 12.30 g', marked)).toMatchObject({ grams: '12.3', isStable: false });
    expect(decodeLine('12.30 g ?', { ...plain, movingMark: '?' }).isStable).toBe(false);
    expect(decodeLine('12.30 g  ', { ...plain, movingMark: '?' }).isStable).toBe(true);
  });

  it('has the unit that was set, whatever stands there', () => {
    expect(gramsOf('12.30', { unit: 'oz' })).toBe('348.6991344375');
    expect(gramsOf('12.30 xyz', { unit: 'g' })).toBe('12.3');
  });

  it.each(['1,234.5 g', '1 234.5 g', '12.3.4 g', "1'250 g"])(
    '%j is not understood: its digits go on',
    (line) => {
      expect(decodeLine(line, plain)).toMatchObject({ grams: null, trouble: 'not-understood' });
    },
  );

  it('takes "gr" for no unit: some makers mean grams by it, others grains', () => {
    expect(decodeLine('520 gr', plain)).toMatchObject({ grams: null, trouble: 'unit-unknown' });
    expect(gramsOf('520 gr', { unit: 'g' })).toBe('520');
  });

  it('tells what it cannot read', () => {
    expect(decodeLine('-------', plain)).toMatchObject({ grams: null, trouble: 'not-understood' });
    expect(decodeLine('', plain)).toMatchObject({ grams: null, trouble: 'not-understood' });
    expect(decodeLine('12 pcs', plain)).toMatchObject({ grams: null, trouble: 'unit-unknown' });
    expect(decodeLine('12.3 g', { ...plain, numberFrom: 40 })).toMatchObject({ trouble: 'not-understood' });
  });
});
