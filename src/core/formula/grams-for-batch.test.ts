import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { gramsForBatch } from './grams-for-batch.ts';
import { percentFromGrams } from './percent-from-grams.ts';

const formulaOf = (...grams: string[]) =>
  must(
    percentFromGrams(
      grams.map((each, index) => ({
        key: String(index),
        stage: 'melt',
        item: { kind: 'material', id: String(index) },
        grams: each,
      })),
    ),
  );
const micro = fc.integer({ min: 1, max: 2_000_000_000 });
const grams = micro.map((each) => exact(each).div(1e6).toFixed());

describe('scaling a formula to a batch', () => {
  it('gives each line batch x line / total', () => {
    const lines = must(gramsForBatch(formulaOf('450', '45', '5'), '1200'));
    expect(lines.map(({ exactGrams }) => exactGrams.toFixed())).toEqual(['1080', '108', '12']);
  });

  it('adds up to the batch to the microgram where no quotient has an end', () => {
    const lines = must(gramsForBatch(formulaOf('1', '1', '1'), '100'));
    expect(lines.map(({ micrograms }) => micrograms)).toEqual([33333334, 33333333, 33333333]);
    expect(lines[0]?.exactGrams.toFixed()).toMatch(/^33\.3{10,}$/);
  });

  it('is linear: so many times the batch is so many times each line', () => {
    fc.assert(
      fc.property(
        fc.array(grams, { minLength: 1, maxLength: 20 }),
        grams,
        fc.integer({ min: 2, max: 50 }),
        (typed, batch, times) => {
          const formula = formulaOf(...typed);
          const one = must(gramsForBatch(formula, batch));
          const many = must(gramsForBatch(formula, exact(batch).times(times)));
          for (const [index, line] of one.entries()) {
            const apart = line.exactGrams.times(times).minus(many[index]?.exactGrams ?? 0);
            // Quotients without an end are kept to nine places of a microgram at least: fifty times half of the last.
            expect(apart.abs().lte('2.5e-14')).toBe(true);
          }
        },
      ),
    );
  });

  it('shares the batch out whole', () => {
    fc.assert(
      fc.property(fc.array(grams, { minLength: 1, maxLength: 20 }), micro, (typed, batch) => {
        const lines = must(gramsForBatch(formulaOf(...typed), exact(batch).div(1e6)));
        expect(lines.reduce((sum, line) => sum + line.micrograms, 0)).toBe(batch);
      }),
    );
  });

  it('refuses a batch of nought, of less, and of fractions of a microgram', () => {
    for (const [batch, code] of [
      ['0', 'mass-zero'],
      ['-5', 'mass-negative'],
      ['0.0000001', 'mass-too-fine'],
    ] as const) {
      expect(gramsForBatch(formulaOf('1'), batch)).toMatchObject({
        problems: [{ code, where: 'batchGrams' }],
      });
    }
  });
});
