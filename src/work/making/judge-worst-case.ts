import type { z } from 'zod';
import { listWorstLimits, type NamedLimit } from '../../check/index.ts';
import { type Market, type making, type Saying, saying } from '../../contract/index.ts';
import { digestOf } from '../../core/digest/index.ts';
import {
  type Exact,
  exact,
  gramsFromMicrograms,
  largest,
  sumOf,
  toText,
  ZERO,
} from '../../core/quantity/index.ts';
import {
  findGramsToAdd,
  findWorstPercent,
  isWithinAtWorst,
  type WeighedPart,
} from '../../core/safety/index.ts';
import {
  type BatchHead,
  listAdditions,
  listBatchLines,
  listDecisions,
  type NamedBatchLine,
  type SignedAddition,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { runCheck } from '../formulas/index.ts';
import { readWeighedLookup } from './weighed-lookup.ts';
import type { WeighingNote } from './weighing-note.ts';
import { tellRoom } from './worst-case-room.ts';

export type WorstCase = NonNullable<z.output<typeof making.worstCase>>;

/** What is weighed, as its scale showed it, with the worst error of that scale at that mass. */
interface Weighed {
  readonly line: NamedBatchLine;
  readonly row: SignedAddition;
  readonly part: WeighedPart;
}

/** A decision is upon what was weighed: where an entry is struck or another comes, it is asked again. */
export const worstCaseKey = (batchId: string): string => `worst-case:${batchId}`;

/** null: not everything is weighed in yet, or it is no batch for sale, or its limits cannot be known. */
export async function judgeWorstCase(context: Context, head: BatchHead): Promise<WorstCase | null> {
  const { db } = context.storage;
  const weighed = await readWeighed(context, head.id);
  if (head.purpose !== 'sale' || head.outcome === 'abandoned' || weighed === null) return null;
  const lookup = await readWeighedLookup(db, head.id);
  const recipe = lookup.revision(head.id);
  const markets = JSON.parse(head.markets) as Market[];
  const checked = await runCheck(context, head.revision_id, markets, { weighed: lookup });
  if (!checked.ok || !recipe) return null;
  const limits = listWorstLimits(checked.value, recipe.lines, lookup);
  const parts = weighed.map(({ part }) => part);
  const over = limits.filter((limit) => !isWithinAtWorst(parts, limit));
  const upon = digestOf(weighed.map(({ row }) => [row.entry_id, row.actual_ug, row.lot_id]));
  return {
    isHeld: over.length > 0,
    upon,
    over: over.map((limit) => limit.says(findWorstPercent(parts, limit))),
    ways: over.length === 0 ? [] : await listWays(context, head, weighed, over),
    decided: over.length === 0 ? null : await findDecision(context, head, upon),
  };
}

/** In the order in which the batch is opened: additions that stand, one a position. */
async function readWeighed({ storage: { db } }: Context, batchId: string): Promise<Weighed[] | null> {
  const lines = await listBatchLines(db, batchId);
  const standing = (await listAdditions(db, batchId)).filter((row) => !row.is_struck);
  if (lines.some(({ position }) => !standing.some((row) => row.position === position))) return null;
  return standing.flatMap((row) => {
    const line = lines.find(({ position }) => position === row.position);
    return line ? [{ line, row, part: partOf(line, row) }] : [];
  });
}

/** The error is told against the target when the weighing was planned; a scale that nobody knows has none told. */
function partOf({ weighing }: NamedBatchLine, row: SignedAddition): WeighedPart {
  const { relativeError } = JSON.parse(weighing) as WeighingNote;
  return {
    grams: gramsFromMicrograms(row.actual_ug),
    errorGrams: exact(relativeError ?? 0).times(gramsFromMicrograms(row.target_ug)),
  };
}

/** Whoever adds weighs to a tenth of a gram (common practice, no source). */
const STEP = '0.1';

/**
 * What would bring the worst case within every limit: more of one weighing (a base), or of all that are poorer than the
 * limits in the shares that they have; each to the tenth of a gram, with what stock, bowl and tins say to it.
 */
async function listWays(
  context: Context,
  head: BatchHead,
  weighed: readonly Weighed[],
  over: readonly NamedLimit[],
): Promise<WorstCase['ways']> {
  const ways: WorstCase['ways'] = [];
  const total = sumOf(weighed.map(({ part }) => part.grams));
  for (const [index, { line, row }] of weighed.entries()) {
    if (line.item_kind !== 'formula' && !isLargest(weighed, index)) continue;
    const grams = gramsOf(weighed, over, [index]);
    if (!grams) continue;
    const shares = [{ lotItemId: line.item_id, name: line.item_name, grams }];
    ways.push({
      says: saying('worst-add-one', {
        item: line.item_name,
        addGrams: toText(grams),
        togetherGrams: toText(grams.plus(gramsFromMicrograms(row.actual_ug))),
      }),
      room: await tellRoom(context, head, shares, { total, added: grams }),
    });
  }
  const poorer = weighed.flatMap((_, index) => (isPoorer(index, over) ? [index] : []));
  const grams = poorer.length > 1 ? gramsOf(weighed, over, poorer) : undefined;
  if (grams) {
    const rest = sumOf(poorer.map((index) => weighed[index]?.part.grams ?? 0));
    const shares = poorer.flatMap((index) => {
      const each = weighed[index];
      if (!each) return [];
      const { item_id: lotItemId, item_name: name } = each.line;
      return [{ lotItemId, name, grams: grams.times(each.part.grams).div(rest) }];
    });
    ways.push({
      says: saying('worst-add-rest', {
        addGrams: toText(grams),
        rest: [...new Set(shares.map(({ name }) => name))].join(', '),
      }),
      room: await tellRoom(context, head, shares, { total, added: grams }),
    });
  }
  return ways;
}

const isLargest = (weighed: readonly Weighed[], index: number): boolean =>
  weighed.every(({ part }) => exact(part.grams).lte(weighed[index]?.part.grams ?? 0));

const isPoorer = (index: number, over: readonly NamedLimit[]): boolean =>
  over.every(({ percentIn, limitPercent }) => exact(percentIn[index] ?? 0).lt(limitPercent));

/** Grams of these weighings together, in the shares that they have, for every limit; undefined: it does not help. */
function gramsOf(
  weighed: readonly Weighed[],
  over: readonly NamedLimit[],
  indexes: readonly number[],
): Exact | undefined {
  const parts = weighed.map(({ part }) => part);
  const added = indexes.flatMap((index) => parts[index] ?? []);
  const mass = sumOf(added.map(({ grams }) => grams));
  const errorGrams = sumOf(added.map(({ errorGrams: each }) => each));
  let most = ZERO;
  for (const limit of over) {
    const held = sumOf(
      indexes.map((index) => exact(parts[index]?.grams ?? 0).times(limit.percentIn[index] ?? 0)),
    );
    const grams = findGramsToAdd(parts, limit, { percent: held.div(mass), errorGrams }, STEP);
    if (grams === undefined) return undefined;
    most = largest(most, grams);
  }
  return most;
}

async function findDecision(
  { storage: { db } }: Context,
  head: BatchHead,
  upon: string,
): Promise<WorstCase['decided']> {
  const key = worstCaseKey(head.id);
  const said: readonly {
    unknown_key: string;
    upon: string;
    verdict: string;
    person_name: string;
    reason: string;
    happened_at: string;
  }[] = await listDecisions(db, head.revision_id);
  const latest = said.filter(({ unknown_key }) => unknown_key === key).at(-1);
  if (!latest || (JSON.parse(latest.upon) as Record<string, string>)[key] !== upon) return null;
  return {
    verdict: latest.verdict as 'accepted' | 'refused',
    by: latest.person_name,
    reason: latest.reason,
    at: latest.happened_at,
  };
}

/** What the worst case says to a release: held, held and decided upon, or within. */
export function sayWorstCase({ isHeld, over, decided }: WorstCase, say: (each: Saying) => string): Saying {
  if (!isHeld) return saying('check-worst-kept');
  const which = over.map(say).join(' ');
  if (decided === null) return saying('check-worst-held', { which });
  const facts = { which, by: decided.by, reason: decided.reason };
  return decided.verdict === 'accepted'
    ? saying('check-worst-accepted', facts)
    : saying('check-worst-refused', facts);
}
