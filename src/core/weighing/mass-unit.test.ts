import { describe, expect, it } from 'vitest';
import { exact } from '../quantity/index.ts';
import { GRAMS_PER_UNIT, gramsOfUnit, type MassUnit } from './mass-unit.ts';

describe('a reading in another unit', () => {
  // NIST Handbook 44, appendix C prints these factors as exact; from memory, check.
  it.each<[string, MassUnit, string]>([
    ['1', 'oz', '28.349523125'],
    ['1', 'lb', '453.59237'],
    ['1.25', 'kg', '1250'],
    ['1', 'ozt', '31.1034768'],
    ['1', 'grain', '0.06479891'],
    ['1', 'dwt', '1.55517384'],
    ['5', 'ct', '1'],
    ['250', 'mg', '0.25'],
    ['2.5', 'g', '2.5'],
    ['1', 'ton', '907184.74'],
  ])('%s %s is %s g, exactly', (value, unit, grams) => {
    expect(gramsOfUnit(value, unit).toFixed()).toBe(grams);
  });

  it('agrees between units: 7000 grains, 16 ounces and one pound are the same', () => {
    const pound = GRAMS_PER_UNIT.lb;
    expect(gramsOfUnit(7000, 'grain').eq(pound)).toBe(true);
    expect(gramsOfUnit(16, 'oz').eq(pound)).toBe(true);
    expect(gramsOfUnit(480, 'grain').eq(GRAMS_PER_UNIT.ozt)).toBe(true);
    expect(gramsOfUnit(exact('0.5'), 'lb').times(2).eq(pound)).toBe(true);
  });
});
