import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, GRAMS_PER_OUNCE, roundToStep } from '../quantity/index.ts';

const OUNCES_PER_POUND = 16;

/**
 * Net weight for the United States in both units: `Net Wt. 1.2 oz (35 g)`. The grams are those declared elsewhere; ounces
 * are worked out exactly (28.349523125 g each) and always rounded down, so that neither figure overstates the content: to a
 * tenth of an ounce, below one ounce to a hundredth. From one pound on the pounds follow in parentheses, from four pounds on
 * they lead.
 * Source: 21 CFR 701.13 (customary and metric units, decimals of two places at most, both ounces and pounds from 1 lb to
 * below 4 lb), read in summaries; rounding down is our reading of "shall not overstate". Errors: not-above-zero content.
 */
export function sayUsNetWeight(grams: ExactInput, where = 'grams'): Result<string> {
  const value = exact(grams);
  if (!value.isFinite() || value.lte(0)) {
    return refused(problem('value-not-above', where, { found: value.toFixed(), allowed: 0 }));
  }
  const ounces = roundDown(value.div(GRAMS_PER_OUNCE));
  if (ounces.isZero()) {
    return refused(problem('net-weight-too-small', where, { found: value.toFixed(), allowed: '0.29' }));
  }
  return done(`Net Wt. ${customary(ounces, `${value.toFixed()} g`)}`);
}

/** Dividing cuts at 60 digits; a content that is a whole step of ounces is met all the same, since its quotient ends. */
const roundDown = (ounces: Exact): Exact => roundToStep(ounces, ounces.lt(1) ? '0.01' : '0.1', 'down');

function customary(ounces: Exact, metric: string): string {
  if (ounces.lt(OUNCES_PER_POUND)) return `${ounces.toFixed()} oz (${metric})`;
  const pounds = poundsAndOunces(ounces);
  return ounces.lt(4 * OUNCES_PER_POUND)
    ? `${ounces.toFixed()} oz (${pounds}) ${metric}`
    : `${pounds} (${metric})`;
}

function poundsAndOunces(ounces: Exact): string {
  const pounds = roundToStep(ounces.div(OUNCES_PER_POUND), 1, 'down');
  const rest = ounces.minus(pounds.times(OUNCES_PER_POUND));
  return rest.isZero() ? `${pounds.toFixed()} lb` : `${pounds.toFixed()} lb ${rest.toFixed()} oz`;
}
