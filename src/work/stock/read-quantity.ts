import { done, problem, type Result, refused } from '../../core/problem.ts';
import { exact, microgramsFromGrams, toText } from '../../core/quantity/index.ts';

export type Unit = 'g' | 'pieces';

export const unitOfMaterial = (kind: string): Unit => (kind === 'packaging' ? 'pieces' : 'g');

/** The most that a ledger line takes: a tonne, or a million pieces (common practice, no source). */
const MOST = 1_000_000;

/** A quantity above nought as it was typed, in the ledger's whole micrograms or pieces. */
export function readQuantity(text: string, unit: Unit, where = 'quantity'): Result<number> {
  const value = exact(text);
  if (value.lte(0)) return refused(problem('value-not-above', where, { found: text, allowed: 0 }));
  if (value.gt(MOST))
    return refused(
      problem('value-too-large', where, { found: text, allowed: MOST, parameters: { counted: 'number' } }),
    );
  if (unit === 'g') return microgramsFromGrams(value, where);
  return value.isInteger()
    ? done(value.toNumber())
    : refused(problem('pieces-not-whole', where, { found: text }));
}

export interface Counted {
  readonly grossGrams?: string | undefined;
  readonly tareGrams?: string | undefined;
  readonly pieces?: number | undefined;
}

/** What was weighed or counted: gross less tare, exact, or whole pieces. Nought is a count as well. */
export function readCounted(counted: Counted, unit: Unit): Result<number> {
  if (unit === 'pieces') {
    if (counted.grossGrams !== undefined || counted.tareGrams !== undefined)
      return refused(problem('weighed-not-counted', 'grossGrams', { found: counted.grossGrams ?? null }));
    return counted.pieces === undefined
      ? refused(problem('field-missing', 'pieces', { allowed: 'int' }))
      : done(counted.pieces);
  }
  if (counted.pieces !== undefined)
    return refused(problem('counted-not-weighed', 'pieces', { found: counted.pieces }));
  return readNet(counted.grossGrams, counted.tareGrams);
}

function readNet(gross: string | undefined, tare: string | undefined): Result<number> {
  if (gross === undefined) return refused(problem('field-missing', 'grossGrams', { allowed: 'string' }));
  // A tub always weighs something: who has emptied it onto the scale says nought, and nobody guesses it.
  if (tare === undefined) return refused(problem('field-missing', 'tareGrams', { allowed: 'string' }));
  const net = exact(gross).minus(tare);
  if (net.lt(0))
    return refused(
      problem('gross-below-tare', 'grossGrams', {
        found: gross,
        allowed: tare,
        parameters: { difference: toText(net.abs()) },
      }),
    );
  return microgramsFromGrams(net, 'grossGrams');
}
