import { describe, expect, it } from 'vitest';
import { describeFields } from './describe-fields.ts';
import { calculations, findCalculation } from './registry.ts';
import { runCalculation } from './run-calculation.ts';

const names = calculations.map(({ name }) => name);

/** Names that other programs call: they stay. */
const CALLED = [
  'tolerable-error',
  'sampling-plan',
  'batch-weight-test',
  'target-fill',
  'smallest-weight',
  'addition-error',
  'scale-errors',
  'premix',
  'control-chart',
  'air-overrun',
  'whipped-fill',
  'units-from-batch',
  'ingredient-list',
  'allergens',
  'limits',
  'exposure',
  'first-expiry',
  'batch-cost',
  'mass-balance',
  'trace',
  'best-before',
];

describe('the catalogue', () => {
  it('has every calculation that other programs call', () => {
    expect(CALLED.filter((name) => !names.includes(name))).toEqual([]);
  });

  it('has each name once, in kebab-case', () => {
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('knows no name that it does not have, and offers those that are alike', () => {
    expect(findCalculation('soap')).toBeUndefined();
    expect(runCalculation('tolerable-eror', {})).toMatchObject({
      problems: [{ code: 'calculation-unknown', found: 'tolerable-eror', allowed: 'tolerable-error' }],
    });
    for (const name of ['toString', 'constructor', '__proto__', '']) {
      expect(runCalculation(name, {})).toMatchObject({ problems: [{ code: 'calculation-unknown' }] });
    }
  });
});

describe.each(calculations.map((calculation) => [calculation.name, calculation] as const))(
  '%s',
  (_name, calculation) => {
    it('computes its example, number for number, and the answer has the shape it promises', () => {
      const answer = calculation.run(calculation.example.input);
      expect(answer).toEqual({ ok: true, value: calculation.example.output });
      expect(calculation.output.safeParse(calculation.example.output).success).toBe(true);
      expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
    });

    it('says what it is, by which equation, over what range, from which source', () => {
      const { title, summary, equation, validRange, sources } = calculation;
      for (const text of [title, summary, equation, validRange]) expect(text.length).toBeGreaterThan(5);
      expect(sources.length).toBeGreaterThan(0);
      for (const { text } of sources) expect(text.length).toBeGreaterThan(5);
    });

    it('describes every field that goes in and comes out', () => {
      const fields = [
        ...describeFields(calculation.input, 'input'),
        ...describeFields(calculation.output, 'output'),
      ];
      expect(fields.length).toBeGreaterThan(1);
      expect(fields.filter(({ about }) => about.trim() === '').map(({ path }) => path)).toEqual([]);
    });

    it('refuses a field that it does not know, by its name, and input that is none', () => {
      const given = calculation.example.input as Record<string, unknown>;
      expect(calculation.run({ ...given, colour: 'red' })).toMatchObject({
        ok: false,
        problems: [{ code: 'field-unknown', where: 'colour' }],
      });
      for (const nothing of [undefined, null, 7, 'text', []]) {
        expect(calculation.run(nothing).ok).toBe(false);
      }
    });

    it('leaves what it was given as it was', () => {
      const given = structuredClone(calculation.example.input);
      calculation.run(given);
      expect(given).toEqual(calculation.example.input);
    });
  },
);
