import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, ONE, sumOf, ZERO } from '../quantity/index.ts';

export interface BatchToCost {
  readonly additions: readonly {
    readonly lot: string;
    readonly grams: ExactInput;
    readonly pricePerGram: ExactInput;
  }[];
  /** Money for the whole batch. */
  readonly labour?: ExactInput | undefined;
  readonly overhead?: ExactInput | undefined;
  readonly packaging?: ExactInput | undefined;
  /** What is lost whenever it goes well, as a fraction of the input or of the good output. */
  readonly normalLossFraction?: ExactInput | undefined;
  readonly lossBasis: 'input' | 'output';
  /** What came out good; absent: as expected. */
  readonly goodGrams?: ExactInput | undefined;
}

export interface BatchCost {
  readonly total: Exact;
  readonly perGoodGram: Exact;
  /** Money lost beyond the normal loss; less than nothing where more came out than expected. */
  readonly abnormalLoss: Exact;
}

const negative = (where: string, value: ExactInput | undefined, code: string): Problem[] =>
  exact(value ?? 0).lt(0) ? [problem(code, where, { found: exact(value ?? 0).toFixed() })] : [];

function problemsOf({ additions, labour, overhead, packaging, normalLossFraction }: BatchToCost): Problem[] {
  const loss = exact(normalLossFraction ?? 0);
  const problems = additions.flatMap(({ grams, pricePerGram }, index) => [
    ...negative(`additions[${index}].grams`, grams, 'mass-negative'),
    ...negative(`additions[${index}].pricePerGram`, pricePerGram, 'money-negative'),
  ]);
  if (sumOf(additions.map(({ grams }) => grams)).isZero()) {
    problems.push(problem('mass-zero', 'additions', { found: 0 }));
  }
  if (loss.lt(0) || loss.gte(1)) {
    problems.push(problem('loss-out-of-range', 'normalLossFraction', { found: loss.toFixed(), allowed: 1 }));
  }
  return [
    ...problems,
    ...negative('labour', labour, 'money-negative'),
    ...negative('overhead', overhead, 'money-negative'),
    ...negative('packaging', packaging, 'money-negative'),
  ];
}

/**
 * Cost of a batch with normal and abnormal loss. Total = additions at their lots' prices + labour + overhead + packaging.
 * Cost of a good gram = total / expected good output, where the expected output is input x (1 - loss) if the normal loss
 * is a fraction of the input, and input / (1 + loss) if it is a fraction of the output. Abnormal loss = (expected -
 * good) x cost of a good gram: an accident is not hidden in the price of what is left.
 * Source: process costing, normal and abnormal loss (ACCA F2 study text, chapter 9).
 */
export function costBatch(batch: BatchToCost): Result<BatchCost> {
  const problems = problemsOf(batch);
  if (problems.length > 0) return refused(...problems);
  const { additions, labour = 0, overhead = 0, packaging = 0 } = batch;
  const input = sumOf(additions.map(({ grams }) => grams));
  const materials = sumOf(additions.map(({ grams, pricePerGram }) => exact(grams).times(pricePerGram)));
  const total = sumOf([materials, labour, overhead, packaging]);
  const loss = exact(batch.normalLossFraction ?? 0);
  // Expected output as numerator over denominator: divided last, so that a price with an end stays exact.
  const numerator = batch.lossBasis === 'input' ? input.times(ONE.minus(loss)) : input;
  const denominator = batch.lossBasis === 'input' ? ONE : ONE.plus(loss);
  const good = batch.goodGrams === undefined ? undefined : exact(batch.goodGrams);
  if (good?.lt(0)) return refused(problem('mass-negative', 'goodGrams', { found: good.toFixed() }));
  if (good?.gt(input)) {
    return refused(
      problem('more-out-than-in', 'goodGrams', { found: good.toFixed(), allowed: input.toFixed() }),
    );
  }
  const missing = good === undefined ? ZERO : numerator.minus(good.times(denominator));
  return done({
    total,
    perGoodGram: total.times(denominator).div(numerator),
    abnormalLoss: total.times(missing).div(numerator),
  });
}
