import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { type IngredientLine, type OrderRule, orderIngredients } from './order-ingredients.ts';

/** Regulation (EC) No 1223/2009, Article 19(1)(g): "ingredients in concentrations of less than 1 %". */
const EU: OrderRule = { thresholdPercent: 1, freeWhen: 'below' };
/** 21 CFR 701.3(f)(2): "ingredients ... at a concentration not exceeding 1 percent". */
const US: OrderRule = { thresholdPercent: 1, freeWhen: 'at-most' };

const lines = (...rows: [string, number | string, IngredientLine['role']?][]): IngredientLine[] =>
  rows.map(([name, percent, role]) => ({ name, percent, role }));
const ordered = (given: IngredientLine[], rule = EU, named: string[] = []) => {
  const { list, anyOrderFrom } = must(orderIngredients(given, named, rule));
  return [list.join(', '), anyOrderFrom];
};

describe('the order of ingredients', () => {
  const butter = lines(
    ['Parfum', '0.6', 'fragrance'],
    ['Helianthus Annuus Seed Oil', 20],
    ['Butyrospermum Parkii Butter', 70],
    ['CI 77491', 2, 'colourant'],
    ['Tocopherol', '0.9'],
    ['Cera Alba', '6.5'],
  );

  it('descends by mass, then what is free, then colourants', () => {
    expect(ordered(butter)).toEqual([
      'Butyrospermum Parkii Butter, Helianthus Annuus Seed Oil, Cera Alba, Tocopherol, Parfum, CI 77491',
      3,
    ]);
  });

  it('adds the allergens among what is free, before the colourants, none twice', () => {
    const named = ['Limonene', 'Linalool', 'limonene', 'Tocopherol'];
    expect(ordered(butter, EU, named)[0]).toMatch(/Tocopherol, Parfum, Limonene, Linalool, CI 77491$/);
  });

  it('counts exactly one percent as ordered in the EU and as free in the US', () => {
    const edge = lines(['A', '98.99'], ['B', '1'], ['C', '0.01']);
    expect(ordered(edge, EU)).toEqual(['A, B, C', 2]);
    expect(ordered(edge, US)).toEqual(['A, B, C', 1]);
    expect(ordered(lines(['A', 99], ['B', '0.999999999']), EU)[1]).toBe(1);
    expect(ordered(lines(['A', 98], ['B', '1.000000001']), US)[1]).toBe(2);
  });

  it('keeps the order given where shares are equal', () => {
    expect(ordered(lines(['B', 50], ['A', 50]))).toEqual(['B, A', 2]);
  });

  it('adds up a name that stands on several lines before it is placed', () => {
    const twice = lines(['Shea', 30], ['Oil', 40], ['SHEA', 30]);
    expect(ordered(twice)).toEqual(['Shea, Oil', 2]);
    expect(ordered(lines(['A', 99], ['X', '0.6'], ['X', '0.6']))[1]).toBe(2);
  });

  it('takes a name as a colourant only where nothing else of it is in the product', () => {
    expect(ordered(lines(['Mica', 2, 'colourant'], ['A', 1], ['Mica', 3]))[0]).toBe('Mica, A');
    expect(ordered(lines(['Mica', 5, 'colourant'], ['A', 1]))[0]).toBe('A, Mica');
  });

  it('lists a product of traces or of colourants alone', () => {
    expect(ordered(lines(['A', '0.2'], ['B', '0.5']))).toEqual(['B, A', 0]);
    expect(ordered(lines(['CI 77491', 60, 'colourant'], ['CI 77492', 40, 'colourant']))).toEqual([
      'CI 77491, CI 77492',
      0,
    ]);
  });

  it('never lists a heavier ordered ingredient after a lighter one, and loses no name', () => {
    const line = fc.record({
      name: fc.constantFrom('A', 'B', 'C', 'D', 'E', 'F'),
      percent: fc.integer({ min: 1, max: 10_000 }).map((each) => exact(each).div(100).toFixed()),
      role: fc.constantFrom(undefined, 'colourant' as const),
    });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 12 }), fc.constantFrom(EU, US), (given, rule) => {
        const { list, anyOrderFrom } = must(orderIngredients(given, [], rule));
        const totalOf = (name: string) =>
          given.filter((each) => each.name === name).reduce((sum, each) => sum.plus(each.percent), exact(0));
        expect([...list].sort()).toEqual([...new Set(given.map(({ name }) => name))].sort());
        const totals = list.slice(0, anyOrderFrom).map(totalOf);
        for (const [index, total] of totals.entries()) {
          expect(total.lte(totals[index - 1] ?? total)).toBe(true);
          expect(total.gte(1)).toBe(true);
        }
      }),
    );
  });

  it('refuses no lines, a blank name, and what is no percentage', () => {
    const codes = (given: IngredientLine[], named: string[] = []) => {
      const result = orderIngredients(given, named, EU);
      return result.ok ? [] : result.problems.map(({ code, where }) => `${code} ${where}`);
    };
    expect(codes([])).toEqual(['formula-without-lines lines']);
    expect(codes(lines([' ', 100.5], ['A', 0]), [''])).toEqual([
      'name-missing lines[0].name',
      'percent-out-of-range lines[0].percent',
      'percent-out-of-range lines[1].percent',
      'name-missing named[0]',
    ]);
  });
});
