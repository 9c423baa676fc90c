import type { z } from 'zod';
import type { Market, making } from '../../contract/index.ts';
import { findWandering, LEAST_MAKINGS, type WanderingLine } from '../../core/making/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import { type Exact, exact, gramsFromMicrograms, sumOf, toText } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  findFormula,
  listAdditions,
  listBatches,
  listProducts,
  type Reader,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { checkForSale } from '../formulas/index.ts';
import { readProductDetails } from '../read-product-details.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { type Recipe, readRecipe } from './read-recipe.ts';

type View = z.output<typeof making.makingRoutes.getWandering.output>;

/** As many of the newest makings as are looked at: older ones tell of other hands (common practice, no source). */
const MOST_MAKINGS = 30;

/** Of the revision that was made last: how its lines came out from making to making. */
export const getWandering: UseCase<'getWandering'> = async (context, { params: { id = '' } }) => {
  const { db } = context.storage;
  if (!(await findFormula(db, id))) return refused(thingNotFound('id', id));
  const made = (await listBatches(db)).filter((row) => row.formula_id === id && row.outcome === 'made');
  const revisionId = made[0]?.revision_id;
  const own = made.filter((row) => row.revision_id === revisionId).slice(0, MOST_MAKINGS);
  if (revisionId === undefined || own.length < LEAST_MAKINGS)
    return done({ made: own.length, markets: [], lines: [] });
  const recipe = await readRecipe(db, revisionId);
  if (!recipe.ok) return recipe;
  const makings = [];
  for (const { id: batchId } of own.reverse()) makings.push(await readMaking(db, batchId));
  return viewWandering(context, recipe.value, { makings, markets: await listMarkets(db, id, own) });
};

/** Wherever it was made for, and wherever its products are sold today: the strictest of them decides the room. */
async function listMarkets(db: Reader, formulaId: string, makings: readonly BatchHead[]): Promise<Market[]> {
  const made = makings.flatMap((row) => JSON.parse(row.markets) as Market[]);
  const products = (await listProducts(db)).map((row) => readProductDetails(row.details));
  const sold = products.filter((each) => each.formulaId === formulaId && !each.isWithdrawn);
  return [...new Set([...made, ...sold.flatMap(({ markets }) => markets)])];
}

async function readMaking(db: Reader, batchId: string): Promise<Map<string, Exact>> {
  const grams = new Map<string, Exact>();
  for (const row of await listAdditions(db, batchId)) {
    if (row.is_struck) continue;
    const before = grams.get(row.lot_item_id) ?? exact(0);
    grams.set(row.lot_item_id, before.plus(gramsFromMicrograms(row.actual_ug)));
  }
  return grams;
}

async function viewWandering(
  context: Context,
  recipe: Recipe,
  { makings, markets }: { readonly makings: readonly Map<string, Exact>[]; readonly markets: Market[] },
): Promise<Result<View>> {
  const lines = await listLines(context, recipe, markets);
  const found = findWandering(lines, makings);
  if (!found.ok) return found;
  const shown = (value: Exact, places = 3) => toText(value.toDecimalPlaces(places));
  return done({
    made: makings.length,
    markets,
    lines: found.value.map((row) => {
      const line = lines.find(({ key }) => key === row.key);
      return {
        itemId: row.key,
        itemName: recipe.lines.find((each) => each.item_id === row.key)?.item_name ?? '',
        askedPercent: shown(exact(line?.percent ?? 0)),
        meanPercent: shown(row.meanPercent),
        spreadPercent: shown(row.spreadPercent),
        leastPercent: shown(row.leastPercent),
        mostPercent: shown(row.mostPercent),
        roomLowPercent: shown(row.roomLowPercent),
        roomHighPercent: shown(row.roomHighPercent),
        bound: row.bound,
        used: row.used && shown(row.used, 2),
        shares: makings.map((each) =>
          shown(
            exact(each.get(row.key) ?? 0)
              .times(100)
              .div(sumOf([...each.values()])),
          ),
        ),
      };
    }),
  });
}

/** What is in it twice counts once, with both; bands as at the bench: small scents are counted in drops. */
async function listLines(
  context: Context,
  recipe: Recipe,
  markets: readonly Market[],
): Promise<WanderingLine[]> {
  const sale = await checkForSale(context, recipe.revisionId, markets);
  const percents = new Map<string, Exact>();
  for (const [index, line] of recipe.lines.entries()) {
    const share = recipe.percents.lines[index]?.percent ?? exact(0);
    percents.set(line.item_id, (percents.get(line.item_id) ?? exact(0)).plus(share));
  }
  return [...percents].map(([key, percent]) => {
    const headroom = sale.ok ? sale.value.headroom.get(key) : undefined;
    const footroom = sale.ok ? sale.value.footroom.get(key) : undefined;
    const isDelicate = recipe.materials.get(key)?.role != null;
    return {
      key,
      percent,
      tolerance: isDelicate ? '0.05' : '0.02',
      limitPercent: headroom ? percent.times(headroom) : null,
      reportLeastPercent: footroom ? percent.times(footroom) : null,
    };
  });
}
