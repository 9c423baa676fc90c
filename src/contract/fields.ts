import { z } from 'zod';
import { readGtin } from '../core/label/index.ts';
import type { Result } from '../core/problem.ts';
import { type Exact, readDecimal } from '../core/quantity/index.ts';

/** A text field that one of our own readers judges: its first problem becomes the field's. */
function readBy(
  read: (text: string, where: string) => Result<Exact>,
  judge?: (value: Exact) => string | undefined,
) {
  return z.string().superRefine((text, context) => {
    const result = read(text, 'value');
    const first = result.ok ? undefined : result.problems[0];
    const code = result.ok ? judge?.(result.value) : first?.code;
    if (code === undefined) return;
    const rest = first?.allowed === undefined ? {} : { allowed: first.allowed };
    context.addIssue({ code: 'custom', params: { code, problem: rest } });
  });
}

/** One metric ton: nothing that two people weigh by hand comes near it (common practice, no source). */
const LARGEST_GRAMS = 1_000_000;

const judgeMass = (value: Exact): string | undefined => {
  if (value.isNegative() && !value.isZero()) return 'mass-negative';
  if (value.gt(LARGEST_GRAMS)) return 'mass-absurd';
  return value.times(1_000_000).isInteger() ? undefined : 'mass-too-fine';
};

/** How what scents a product stands in its list of ingredients. */
export const scentOnLabel = z.enum(['by-name', 'parfum']);

export const id = z.string().regex(/^[A-Za-z0-9-]{1,64}$/);
export const text = z.string().trim().max(2000);
export const name = z.string().trim().min(1).max(200);
/** An account of what happened, for a record that is kept. */
export const account = z.string().trim().min(1).max(1000);
export const date = z.iso.date();
/** An instant with its offset: `2026-11-26T08:05:00Z`. */
export const instant = z.iso.datetime({ offset: true });
/** Decimal text with a point: `12.5`. Never a float. */
export const decimal = readBy(readDecimal);
/** Grams, nought allowed; at most six places, since the ledger counts whole micrograms. */
export const grams = readBy(readDecimal, judgeMass);
export const gramsAboveZero = readBy(readDecimal, (value) =>
  value.isZero() ? 'mass-zero' : judgeMass(value),
);
/** Minutes that something took: nought allowed. */
export const minutes = readBy(readDecimal, (value) => (value.lt(0) ? 'minutes-negative' : undefined));
/** Degrees Celsius at a bench: from a deep freezer to what no butter lives through (common practice, no source). */
export const celsius = readBy(readDecimal, (value) =>
  value.lt(-40) || value.gt(250) ? 'heat-absurd' : undefined,
);
export const millilitresAboveZero = readBy(readDecimal, (value) =>
  value.lte(0) ? 'volume-zero' : undefined,
);
export const percent = readBy(readDecimal, (value) =>
  value.lt(0) || value.gt(100) ? 'percent-out-of-range' : undefined,
);
export const money = readBy(readDecimal, (value) => {
  if (value.lt(0)) return 'money-negative';
  return value.gt(10_000_000) ? 'money-absurd' : undefined;
});
/** An article number with its check digit, or ''. */
export const gtin = z
  .string()
  .trim()
  .max(30)
  .superRefine((text, context) => {
    const read = text === '' ? undefined : readGtin(text, 'value');
    if (!read || read.ok) return;
    for (const { code, where: _, ...rest } of read.problems)
      context.addIssue({ code: 'custom', params: { code, problem: rest } });
  });
export const pieces = z.number().int().min(0).max(1_000_000);
export const piecesAboveZero = z.number().int().min(1).max(1_000_000);
/** Which state of an editable thing the writer saw; a write with an old version is refused with both sides shown. */
export const version = z.number().int().min(1);

/** Who entered what when, on which device; its id is made where it was entered, so that the same entry sent twice counts once. */
export const stamp = z.strictObject({
  id: id,
  at: instant,
  by: id,
  device: z.string().trim().min(1).max(100).default('this computer'),
});
export type Stamp = z.output<typeof stamp>;

/** `US`: federal rules only; state laws add duties. */
export const market = z.enum(['GB', 'NI', 'EU', 'US']);
export type Market = z.output<typeof market>;
export const use = z.enum(['leave-on', 'rinse-off']);
export const confidence = z.enum([
  'read',
  'read-secondary',
  'computed',
  'derived',
  'memory',
  'supplier',
  'report',
]);
export const unit = z.enum(['g', 'pieces']);

/** An amount with its unit: grams as decimal text, pieces as whole-number text. */
export const amount = z.strictObject({ value: z.string(), unit });
export type Amount = z.output<typeof amount>;

/** A sentence as data: words/ says it. */
export const saying = z.object({
  code: z.string(),
  parameters: z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.null()])),
});
export type Saying = z.output<typeof saying>;

/** Of a problem that travels within an answer. */
export const problemValue = z.union([z.string(), z.number(), z.boolean(), z.null()]);

export const createdThing = z.object({ id });
export const namedThing = z.object({ id, name: z.string() });
