import type { z } from 'zod';
import { listWorstLimits, type NamedLimit } from '../../check/index.ts';
import { type Market, type making, type Saying, saying } from '../../contract/index.ts';
import { digestOf } from '../../core/digest/index.ts';
import type { FormulaLine, FormulaLookup } from '../../core/formula/index.ts';
import { type Exact, exact, largest, sumOf, toText, ZERO } from '../../core/quantity/index.ts';
import {
  findGramsToAdd,
  findWorstPercent,
  isWithinAtWorst,
  type WeighedPart,
} from '../../core/safety/index.ts';
import {
  type BatchHead,
  listBatchTins,
  listDecisions,
  listProducts,
  listRunStates,
  type Reader,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { runCheck } from '../formulas/index.ts';
import { readProductDetails } from '../read-product-details.ts';
import { readWeighed, type Weighed } from './read-weighed.ts';
import { readWeighedLookup } from './weighed-lookup.ts';
import { tellRoom } from './worst-case-room.ts';

export type WorstCase = NonNullable<z.output<typeof making.worstCase>>;

/** A decision is upon what was weighed and what was said of it: where either becomes another, it is asked again. */
export const worstCaseKey = (batchId: string): string => `worst-case:${batchId}`;

/** null: not everything is weighed in yet, or it is no batch for sale, or its limits cannot be known. */
export async function judgeWorstCase(context: Context, head: BatchHead): Promise<WorstCase | null> {
  const { db } = context.storage;
  const weighed = await readWeighed(db, head.id);
  if (head.purpose !== 'sale' || head.outcome === 'abandoned' || weighed === null) return null;
  const lookup = await readWeighedLookup(db, head.id);
  const recipe = lookup.revision(head.id);
  const markets = await listMarketsOfBatch(db, head);
  const checked = await runCheck(context, head.revision_id, markets, { weighed: lookup });
  if (!checked.ok || !recipe) return null;
  const behind = await readBasesWeighed(db, recipe.lines, lookup);
  const limits = listWorstLimits(checked.value, recipe.lines, {
    ...lookup,
    weighedOf: (id) => behind.get(id)?.map(partOf),
  });
  const parts = weighed.map(partOf);
  const over = limits.filter((limit) => !isWithinAtWorst(parts, limit));
  const says = [
    ...over.map((limit) => limit.says(findWorstPercent(parts, limit))),
    ...(limits.length === 0 ? [] : sayUnknown([...weighed, ...[...behind.values()].flat()])),
  ];
  const upon = digestOf([
    weighed.map(({ row }) => [row.entry_id, row.actual_ug, row.lot_id, row.scale_id]),
    [...markets].sort(),
    // What is said of it may become worse though nothing was weighed since: a scale is tested, a limit is another.
    says,
  ]);
  return {
    isHeld: says.length > 0,
    upon,
    over: says,
    ways: over.length === 0 ? [] : await listWays(context, head, weighed, over),
    decided: says.length === 0 ? null : await findDecision(context, head, upon),
  };
}

/** Where its error is not known a weighing is taken as shown here, and told as not known beside it. */
const partOf = ({ grams, errorGrams }: Weighed): WeighedPart => ({ grams, errorGrams: errorGrams ?? ZERO });

/** What nobody knows the error of is never taken to have none. */
function sayUnknown(weighed: readonly Weighed[]): Saying[] {
  const items = weighed.filter(({ errorGrams }) => errorGrams === null).map(({ line }) => line.item_name);
  return items.length === 0 ? [] : [saying('worst-scale-unknown', { items: [...new Set(items)].join(', ') })];
}

/** Those that it was begun for, and those that what is filled from it, or was to be, is sold in today. */
async function listMarketsOfBatch(db: Reader, head: BatchHead): Promise<Market[]> {
  const ids = new Set(
    [...(await listBatchTins(db, head.id)), ...(await listRunStates(db, [head.id]))].map(
      (row) => row.product_id,
    ),
  );
  const products = (await listProducts(db)).filter((row) => ids.has(row.id));
  const sold = products.flatMap((row) => readProductDetails(row.details).markets);
  return [...new Set([...(JSON.parse(head.markets) as Market[]), ...sold])];
}

/** The weighings of each base that lies behind these lines, and of the bases behind those, by its batch. */
async function readBasesWeighed(
  db: Reader,
  lines: readonly FormulaLine[],
  lookup: FormulaLookup,
): Promise<ReadonlyMap<string, readonly Weighed[]>> {
  const found = new Map<string, readonly Weighed[]>();
  let frontier = lines;
  while (frontier.length > 0) {
    const ids = frontier.flatMap(({ item }) => (item.kind === 'base' ? [item.formulaId] : []));
    const fresh = [...new Set(ids)].filter((id) => !found.has(id));
    for (const id of fresh) found.set(id, (await readWeighed(db, id)) ?? []);
    frontier = fresh.flatMap((id) => lookup.base(id)?.lines ?? []);
  }
  return found;
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
  const total = sumOf(weighed.map(({ grams }) => grams));
  for (const [index, { line }] of weighed.entries()) {
    // Of a line that was weighed in parts the first stands for all of them.
    if (weighed.findIndex((each) => each.line.position === line.position) !== index) continue;
    if (line.item_kind !== 'formula' && !isLargest(weighed, line.position)) continue;
    const grams = gramsOf(weighed, over, [index]);
    if (!grams) continue;
    const shares = [{ lotItemId: line.item_id, name: line.item_name, grams }];
    ways.push({
      says: saying('worst-add-one', {
        item: line.item_name,
        addGrams: toText(grams),
        togetherGrams: toText(grams.plus(gramsAt(weighed, line.position))),
      }),
      room: await tellRoom(context, head, shares, { total, added: grams }),
    });
  }
  const poorer = weighed.flatMap((_, index) => (isPoorer(index, over) ? [index] : []));
  const grams = poorer.length > 1 ? gramsOf(weighed, over, poorer) : undefined;
  if (grams) {
    const rest = sumOf(poorer.map((index) => weighed[index]?.grams ?? 0));
    const shares = poorer.flatMap((index) => {
      const each = weighed[index];
      if (!each) return [];
      const { item_id: lotItemId, item_name: name } = each.line;
      return [{ lotItemId, name, grams: grams.times(each.grams).div(rest) }];
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

const gramsAt = (weighed: readonly Weighed[], position: number): Exact =>
  sumOf(weighed.filter(({ line }) => line.position === position).map(({ grams }) => grams));

const isLargest = (weighed: readonly Weighed[], position: number): boolean =>
  weighed.every(({ line }) => gramsAt(weighed, line.position).lte(gramsAt(weighed, position)));

const isPoorer = (index: number, over: readonly NamedLimit[]): boolean =>
  over.every(({ percentIn, limitPercent }) => exact(percentIn[index] ?? 0).lt(limitPercent));

/** Grams of these weighings together, in the shares that they have, for every limit; undefined: it does not help. */
function gramsOf(
  weighed: readonly Weighed[],
  over: readonly NamedLimit[],
  indexes: readonly number[],
): Exact | undefined {
  const parts = weighed.map(partOf);
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
