import { problem, type Result, refused } from '../../../core/problem.ts';
import { type Exact, readDecimal, toText } from '../../../core/quantity/index.ts';
import { readWhole } from '../../show/read-whole.ts';
import { typedDecimal } from '../../show/typed-decimal.ts';

/** What stands in the two displays of the weighing, or the count. */
export interface WeighDraft {
  readonly gross: string;
  readonly tare: string;
  readonly pieces: string;
}

export const EMPTY_WEIGHING: WeighDraft = { gross: '', tare: '', pieces: '' };

/** The part of a request that says what was weighed or counted. */
export interface Weighed {
  readonly grossGrams?: string;
  readonly tareGrams?: string;
  readonly pieces?: number;
}

/**
 * Net = gross - tare, in grams, exact. Refused while a figure is missing or the tub alone weighs more. A tub that is not
 * spoken of is asked about: taken as nought, its weight would be booked as butter.
 */
export function readNet({ gross, tare }: WeighDraft): Result<Exact> {
  const full = readDecimal(gross, 'grossGrams');
  if (!full.ok) return full;
  if (full.value.lt(0))
    return refused(problem('gross-negative', 'grossGrams', { found: toText(full.value) }));
  if (tare.trim() === '') return refused(problem('tare-not-said', 'tareGrams'));
  const empty = readDecimal(tare, 'tareGrams');
  if (!empty.ok) return empty;
  const net = full.value.minus(empty.value);
  if (net.lt(0)) return refused(problem('tare-above-gross', 'tareGrams', { found: tare, allowed: gross }));
  return { ok: true, value: net };
}

/** As decimal text in the lot's own unit. */
export function readFound(draft: WeighDraft, unit: 'g' | 'pieces'): Result<string> {
  const read: Result<Exact | number> = unit === 'g' ? readNet(draft) : readWhole(draft.pieces, 'pieces');
  if (!read.ok) return read;
  return { ok: true, value: typeof read.value === 'number' ? String(read.value) : toText(read.value) };
}

/** Found less what the books say, as decimal text with its sign. */
export function differenceFrom(found: string, onTheBooks: string): string {
  const [now, before] = [readDecimal(found, 'found'), readDecimal(onTheBooks, 'onHand')];
  return now.ok && before.ok ? toText(now.value.minus(before.value)) : '0';
}

export function weighedOf(draft: WeighDraft, unit: 'g' | 'pieces'): Result<Weighed> {
  const found = readFound(draft, unit);
  if (!found.ok) return found;
  if (unit === 'pieces') return { ok: true, value: { pieces: Number(found.value) } };
  return {
    ok: true,
    value: {
      grossGrams: typedDecimal(draft.gross),
      tareGrams: typedDecimal(draft.tare),
    },
  };
}
