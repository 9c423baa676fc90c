import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { expandFormula, type FormulaLookup, type FormulaRecipe } from './expand-formula.ts';
import type { FormulaLine } from './formula-line.ts';

const material = (id: string, grams: string): FormulaLine => ({
  key: id,
  stage: 'a',
  item: { kind: 'material', id },
  grams,
});
const base = (formulaId: string, grams: string): FormulaLine => ({
  key: formulaId,
  stage: 'a',
  item: { kind: 'base', formulaId },
  grams,
});
const recipe = (formulaId: string, ...lines: FormulaLine[]): FormulaRecipe => ({
  formulaId,
  name: `The ${formulaId}`,
  lines,
});
/** Revisions and formulas share an id here. */
const lookupOf = (...recipes: FormulaRecipe[]): FormulaLookup => {
  const byId = new Map(recipes.map((each) => [each.formulaId, each]));
  return { revision: (id) => byId.get(id), base: (id) => byId.get(id) };
};
const percents = (id: string, lookup: FormulaLookup) =>
  Object.fromEntries(
    must(expandFormula(id, lookup)).materials.map(({ materialId, percent }) => [
      materialId,
      percent.toFixed(),
    ]),
  );
const refusal = (id: string, lookup: FormulaLookup) => {
  const result = expandFormula(id, lookup);
  return result.ok ? undefined : result.problems[0];
};

describe('opening the bases of a formula', () => {
  const quiet = recipe('quiet', material('shea', '300'), material('sunflower', '100'));

  it('gives materials in percent of the finished product', () => {
    const scented = recipe('scented', base('quiet', '490'), material('orange', '10'));
    expect(percents('scented', lookupOf(quiet, scented))).toEqual({
      shea: '73.5',
      sunflower: '24.5',
      orange: '2',
    });
  });

  it('adds a material that is met twice', () => {
    const scented = recipe('scented', base('quiet', '60'), material('shea', '40'));
    expect(percents('scented', lookupOf(quiet, scented))).toEqual({ shea: '85', sunflower: '15' });
  });

  it('opens a base within a base', () => {
    const rich = recipe('rich', base('quiet', '80'), material('wax', '20'));
    const scented = recipe('scented', base('rich', '50'), base('quiet', '50'));
    expect(percents('scented', lookupOf(quiet, rich, scented))).toEqual({
      shea: '67.5',
      sunflower: '22.5',
      wax: '10',
    });
  });

  it('stays exact through shares that have no end', () => {
    const thirds = recipe('thirds', material('shea', '1'), material('wax', '2'));
    const sevenths = recipe('sevenths', base('thirds', '3'), material('shea', '4'));
    const { materials, whole } = must(expandFormula('sevenths', lookupOf(thirds, sevenths)));
    expect(materials.map(({ materialId, parts }) => [materialId, parts])).toEqual([
      ['shea', 5n],
      ['wax', 2n],
    ]);
    expect(whole).toBe(7n);
  });

  it('comes to the whole, whatever is mixed', () => {
    const grams = fc.integer({ min: 1, max: 999_999_999 }).map((each) => exact(each).div(1e6).toFixed());
    const some = fc.array(grams, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(some, some, grams, (inBase, beside, ofBase) => {
        const own = recipe('own', ...inBase.map((each, index) => material(`m${index}`, each)));
        const mixed = recipe(
          'mixed',
          base('own', ofBase),
          ...beside.map((each, index) => material(`m${index + 2}`, each)),
        );
        const { materials, whole } = must(expandFormula('mixed', lookupOf(own, mixed)));
        expect(materials.reduce((sum, { parts }) => sum + parts, 0n)).toBe(whole);
      }),
    );
  });

  it('refuses a base that contains itself, naming the loop', () => {
    const one = recipe('one', base('two', '1'));
    const two = recipe('two', material('shea', '1'), base('three', '1'));
    const three = recipe('three', base('two', '1'));
    expect(refusal('one', lookupOf(one, two, three))).toMatchObject({
      code: 'formula-contains-itself',
      where: 'The three',
      found: 'The two > The three > The two',
    });
    expect(refusal('self', lookupOf(recipe('self', base('self', '1'))))).toMatchObject({
      found: 'The self > The self',
    });
  });

  it('refuses a missing base and a revision that is not there', () => {
    expect(refusal('scented', lookupOf(recipe('scented', base('gone', '1'))))).toMatchObject({
      code: 'base-not-found',
      where: 'The scented',
      found: 'gone',
    });
    expect(refusal('nowhere', lookupOf())).toMatchObject({ code: 'thing-not-found', found: 'nowhere' });
  });

  it('opens ten deep and refuses eleven', () => {
    const chain = (length: number) =>
      Array.from({ length }, (_, index) =>
        recipe(`b${index}`, index === length - 1 ? material('shea', '1') : base(`b${index + 1}`, '1')),
      );
    expect(percents('b0', lookupOf(...chain(10)))).toEqual({ shea: '100' });
    expect(refusal('b0', lookupOf(...chain(11)))).toMatchObject({ code: 'base-too-deep', allowed: 10 });
  });

  it('passes on what is wrong with a line of a base', () => {
    const broken = recipe('broken', material('shea', '0'));
    expect(refusal('scented', lookupOf(broken, recipe('scented', base('broken', '1'))))?.code).toBe(
      'mass-zero',
    );
  });
});
