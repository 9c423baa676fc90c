/**
 * Errors of scales against OIML R 76-1 table 6 (class III, e = 1 g; exact) and the uncertainty of a small addition
 * worked out by hand from JCGM 100 (1.3 g on a scale of 0.1 g; six places).
 */
import { describe, expect, it } from 'vitest';
import { additionErrorCalculation } from '../../src/catalogue/addition-error.ts';
import { scaleErrorsCalculation } from '../../src/catalogue/scale-errors.ts';
import { must } from '../../src/core/problem.ts';
import { accuracyClasses, initialErrors, weighingUncertaintyRules } from '../../src/reference/index.ts';

describe('permissible errors, published values', () => {
  it.each([
    [500, 0.5, 1],
    [501, 1, 2],
    [2000, 1, 2],
    [2001, 1.5, 3],
    [10_000, 1.5, 3],
  ])('class III, e = 1 g, load %i g', (loadGrams, initialGrams, inServiceGrams) => {
    const scale = { accuracyClass: 'III', verificationIntervalGrams: 1 };
    expect(must(scaleErrorsCalculation.run({ ...scale, loadGrams }))).toEqual({
      initialGrams,
      inServiceGrams,
      minimumLoadGrams: 20,
    });
  });

  it.each(initialErrors.filter((row) => row.loadInE.upTo !== null))(
    'changes only above the end of $id',
    ({ accuracyClass, loadInE, permissibleErrorInE }) => {
      const { verificationIntervalGrams, minimumLoadInE } =
        accuracyClasses.find((row) => row.accuracyClass === accuracyClass) ?? accuracyClasses[0]!;
      const e = verificationIntervalGrams.from;
      const load = Number(((loadInE.upTo ?? 0) * e).toPrecision(12));
      const atEnd = must(
        scaleErrorsCalculation.run({ accuracyClass, verificationIntervalGrams: e, loadGrams: load }),
      );
      expect(atEnd.initialGrams).toBe(Number((permissibleErrorInE * e).toPrecision(12)));
      expect(atEnd.minimumLoadGrams).toBe(Number((minimumLoadInE * e).toPrecision(12)));
      const above = scaleErrorsCalculation.run({
        accuracyClass,
        verificationIntervalGrams: e,
        loadGrams: Number((load + e / 1000).toPrecision(15)),
      });
      const found = above.ok ? above.value.initialGrams : above.problems[0]?.code;
      const next = Number(((permissibleErrorInE + 0.5) * e).toPrecision(12));
      expect(found).toBe(permissibleErrorInE === 1.5 ? 'load-outside-class' : next);
    },
  );
});

describe('uncertainty of a small addition, worked out by hand', () => {
  const examples = weighingUncertaintyRules.flatMap((rule) => rule.examples ?? []);

  it('has the example with and without the class', () => expect(examples).toHaveLength(2));

  it.each(examples)('u = $standardUncertaintyGrams g', (example) => {
    const { standardUncertaintyGrams, relativeStandardUncertainty, relativeExpanded, ...rest } = example;
    const { worstCaseRelative, inServiceGrams, minimumLoadGrams, belowMinimumLoad, ...input } = rest;
    const found = must(additionErrorCalculation.run(input));
    expect(found.standardUncertaintyGrams).toBeCloseTo(standardUncertaintyGrams, 6);
    expect(found.relativeStandardUncertainty).toBeCloseTo(relativeStandardUncertainty, 6);
    expect(found.relativeExpanded).toBeCloseTo(relativeExpanded, 6);
    expect(found.belowMinimumLoad).toBe(belowMinimumLoad ?? null);
    if (worstCaseRelative !== undefined) expect(found.worstCaseRelative).toBeCloseTo(worstCaseRelative, 6);
    if (inServiceGrams !== undefined) {
      const { accuracyClass, verificationIntervalGrams, weightGrams: loadGrams } = input;
      const errors = must(
        scaleErrorsCalculation.run({ accuracyClass, verificationIntervalGrams, loadGrams }),
      );
      expect(errors).toMatchObject({ inServiceGrams, minimumLoadGrams });
    }
  });
});
