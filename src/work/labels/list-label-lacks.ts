import type { z } from 'zod';
import { DURABILITY_THRESHOLD_MONTHS } from '../../catalogue/index.ts';
import type { labels, Market, orders } from '../../contract/index.ts';
import { decideBestBefore, isLacking } from '../../core/label/index.ts';
import { done, problem, refused } from '../../core/problem.ts';
import { type BatchHead, findBatch, listLotsAtHand } from '../../storage/index.ts';
import { sayProblem } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { type LabelFor, labelForProduct, sayReason } from '../filling/compose-label.ts';
import { listRevisionsInForce } from '../formulas/index.ts';
import { localDate, workshopToday, workshopZone } from '../local-date.ts';
import { findMadeLookup } from '../making/made-lookup.ts';
import { readAtOnce } from '../read-at-once.ts';
import { thingNotFound } from '../record.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { designOf, plainDesign } from './label-design.ts';

type Lack = z.output<typeof labels.labelLack>;
type Asked = Omit<LabelFor, 'market'>;

/** A run gives its tins their number: before it has begun that is no lack. */
const BY_THE_RUN = 'batch-number';

/** The list of a label's elements, asked before anything is filled: what of it is missing, once for all its markets. */
export const listLabelLacks: UseCase<'listLabelLacks'> = (asked, { body }) =>
  readAtOnce(asked, async (context) => {
    const { details, productId, batchId } = body;
    const { db } = context.storage;
    const batch = batchId === null ? undefined : await findBatch(db, batchId);
    if (batchId !== null && !batch) return refused(thingNotFound('batchId', batchId));
    const revisionId = batch?.revision_id ?? (await findInForce(context, details.formulaId));
    if (revisionId === undefined)
      return refused(problem('product-without-recipe', 'details.formulaId', { found: details.name }));
    const label: Asked = {
      details,
      revisionId,
      batchNumber: null,
      durability: await findDurability(context, details, batch),
      design: productId === null ? plainDesign(details) : await designOf(db, productId, details),
      ...(batch && { made: await findMadeLookup(db, batch.id) }),
    };
    const lacks: Lack[] = [];
    for (const market of details.markets) lacks.push(...(await findLacks(context, label, market)));
    return done(mergeMarkets(lacks));
  });

const findInForce = async ({ storage }: Context, formulaId: string): Promise<string | undefined> =>
  (await listRevisionsInForce(storage.db)).find((head) => head.formula_id === formulaId)?.id;

/** As of the day on which the batch was made, and no longer than its bowl keeps; else as if it were made today. */
async function findDurability(context: Context, details: orders.ProductDetails, batch?: BatchHead) {
  const { closed_at: closedAt = null, lot_id: lotId = null } = batch ?? {};
  const [bowl] = lotId === null ? [] : await listLotsAtHand(context.storage.db, { lotIds: [lotId] });
  const made =
    closedAt === null ? await workshopToday(context) : localDate(closedAt, await workshopZone(context));
  const lots = bowl?.best_before ? [bowl.best_before] : [];
  const question = { made, months: details.bestBeforeMonths, lots };
  const durability = decideBestBefore(question, DURABILITY_THRESHOLD_MONTHS);
  return durability.ok ? durability.value : null;
}

async function findLacks(context: Context, label: Asked, market: Market): Promise<Lack[]> {
  const composed = await labelForProduct(context, { ...label, market });
  if (!composed.ok) {
    const reasons = composed.problems.map((each) => sayProblem(each).says);
    return reasons.map((reason) => ({
      element: null,
      says: saying('label-not-to-be-said', { reason }),
      markets: [market],
    }));
  }
  return composed.value.text.elements
    .filter((each) => isLacking(each) && each.element !== BY_THE_RUN)
    .flatMap(({ element, reason }) =>
      reason === null ? [] : [{ element, says: sayReason(reason), markets: [market] }],
    );
}

function mergeMarkets(lacks: readonly Lack[]): Lack[] {
  const merged = new Map<string, Lack>();
  for (const lack of lacks) {
    // Which market it is stands in the list of them.
    const { market: _market, ...parameters } = lack.says.parameters;
    const key = JSON.stringify([lack.element, lack.says.code, parameters]);
    const known = merged.get(key);
    merged.set(key, known ? { ...known, markets: [...known.markets, ...lack.markets] } : lack);
  }
  return [...merged.values()];
}
