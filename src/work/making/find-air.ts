import type { orders, steps, stock } from '../../contract/index.ts';
import { isUsualDensity } from '../../core/making/index.ts';
import { exact, gramsFromMicrograms, smallest, sumOf, toText } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  findMaterials,
  listBatchTins,
  listEarlierBatches,
  listProducts,
  listScales,
  type MaterialRow,
  type ProductRow,
  type Reader,
  type ScaleRow,
  type SignedAddition,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { findFillSpread } from '../find-fill-spread.ts';
import { listCups } from '../list-cups.ts';
import { gramsText } from '../quantity-text.ts';
import { readProductDetails } from '../read-product-details.ts';
import { workshopDetails } from '../workshop-details.ts';
import { findLearntAim } from './read-tins.ts';

/** A season of one product: older ones were whipped by another hand or machine (common practice, no source). */
const NEWEST_BATCHES = 12;

interface Air {
  readonly tins: readonly steps.AirTin[];
  readonly air: steps.StepAir;
}

/** What whipping and its cup test are judged by: the bowl, its scale, earlier batches, the tins it is meant for. */
export async function findAir(
  context: Context,
  head: BatchHead,
  additions: readonly SignedAddition[],
): Promise<Air> {
  const { db } = context.storage;
  const { bowlGrams, bowlMl } = await workshopDetails(context);
  const scales = await listScales(db);
  const inUg = additions.reduce((sum, row) => (row.is_struck ? sum : sum + row.actual_ug), 0);
  return {
    tins: await findAirTins(db, head, scales),
    air: {
      bowlGrams: gramsText(inUg),
      bowlHoldsGrams: bowlGrams,
      bowlHoldsMl: bowlMl,
      scaleStepGrams: finestStep(scales, inUg),
      ...(await learnDensity(db, head)),
    },
  };
}

/** Of the scales that hold it all, the one that shows the smallest step. */
function finestStep(scales: readonly ScaleRow[], massUg: number): string | null {
  const holding = scales.filter((scale) => gramsFromMicrograms(massUg).lte(scale.capacity_grams));
  const [first, ...rest] = holding.map((scale) => exact(scale.readability_grams));
  return first ? toText(rest.reduce((least, step) => smallest(least, step), first)) : null;
}

async function learnDensity(
  db: Reader,
  head: BatchHead,
): Promise<Pick<steps.StepAir, 'earlier' | 'unwhippedGramsPerMl'>> {
  const wanted = { formulaId: head.formula_id, exceptId: head.id, newest: NEWEST_BATCHES };
  const earlier = await listEarlierBatches(db, wanted);
  const cups = await listCups(db, [...earlier, head.id]);
  const whipped = earlier.flatMap((id) => {
    const last = cups.filter((each) => each.batchId === id).at(-1);
    return last ? [meanDensity(last.cups)] : [];
  });
  const unwhipped = cups
    .flatMap((each) => each.cups)
    .flatMap(({ unwhippedGrams: net, cupMl }) =>
      net === null || !isUsualDensity(net, cupMl) ? [] : [exact(net).div(cupMl)],
    );
  return {
    earlier:
      whipped.length === 0
        ? null
        : {
            batches: whipped.length,
            meanGramsPerMl: roundDensity(sumOf(whipped).div(whipped.length)),
            leastGramsPerMl: roundDensity(whipped.reduce((least, each) => smallest(least, each))),
          },
    unwhippedGramsPerMl: unwhipped.length === 0 ? null : roundDensity(sumOf(unwhipped).div(unwhipped.length)),
  };
}

const meanDensity = (cups: readonly steps.FullCup[]) =>
  sumOf(cups.map((cup) => exact(cup.grossGrams).minus(cup.tareGrams).div(cup.cupMl))).div(cups.length);

/** A cup that is weighed to a tenth of a gram tells no more. */
const roundDensity = (density: ReturnType<typeof exact>): string => toText(density.toDecimalPlaces(4));

/** The tins that a batch is meant for, else those of any product of its formula, where the brim volume is known. */
async function findAirTins(
  db: Reader,
  head: BatchHead,
  scales: readonly ScaleRow[],
): Promise<steps.AirTin[]> {
  const planned = new Map((await listBatchTins(db, head.id)).map((row) => [row.product_id, row.units]));
  const products = (await listProducts(db)).filter((row) => row.formula_id === head.formula_id);
  const meant = planned.size > 0 ? products.filter((row) => planned.has(row.id)) : products;
  const details = meant.map((row) => readProductDetails(row.details));
  const tins = await findMaterials(db, [...new Set(details.map(({ tinId }) => tinId))]);
  const found: steps.AirTin[] = [];
  for (const row of meant) {
    const tin = await findAirTin(db, row, { tins, scales, planned: planned.get(row.id) ?? null });
    if (tin) found.push(tin);
  }
  return found;
}

interface TinParts {
  readonly tins: readonly MaterialRow[];
  readonly scales: readonly ScaleRow[];
  readonly planned: number | null;
}

async function findAirTin(
  db: Reader,
  row: ProductRow,
  { tins, scales, planned }: TinParts,
): Promise<steps.AirTin | undefined> {
  const details: orders.ProductDetails = readProductDetails(row.details);
  const tin = tins.find((each) => each.id === details.tinId);
  const { brimMl, tareGrams } = tin
    ? (JSON.parse(tin.details) as stock.MaterialDetails)
    : { brimMl: null, tareGrams: null };
  if (brimMl === null) return undefined;
  return {
    productId: row.id,
    productName: details.name,
    brimMl,
    declaredGrams: details.declaredGrams,
    aimGrams: toText(
      await findLearntAim(db, { productId: row.id, details, tareGrams: tareGrams ?? '0' }, scales),
    ),
    tareGrams,
    headspacePercent: details.headspacePercent,
    lossPercent: details.bowlLossPercent,
    planned,
    spread: await findFillSpread(db, row.id),
  };
}
