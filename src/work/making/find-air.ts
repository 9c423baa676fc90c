import type { orders, steps, stock } from '../../contract/index.ts';
import { poolSpread } from '../../core/filling/index.ts';
import { isUsualDensity } from '../../core/making/index.ts';
import { exact, gramsFromMicrograms, smallest, sumOf, toText } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  findMaterials,
  listBatchTins,
  listEarlierBatches,
  listFillWeights,
  listProducts,
  listRunsOfProduct,
  listScales,
  listStepsWeighed,
  listWhipRounds,
  type MaterialRow,
  type ProductRow,
  type Reader,
  type ScaleRow,
  type SignedAddition,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { gramsText } from '../quantity-text.ts';
import { readProductDetails } from '../read-product-details.ts';
import { workshopDetails } from '../workshop-details.ts';
import { findTinAim } from './read-tins.ts';

/** A season of one product: older ones were whipped by another hand or machine (common practice, no source). */
const NEWEST_BATCHES = 12;
const NEWEST_RUNS = 6;

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

interface CupsOfBatch {
  readonly batchId: string;
  readonly cups: readonly steps.FullCup[];
}

/** One that can only be a slip teaches nothing, also where somebody said that it is so. */
const isTeaching = ({ grossGrams, tareGrams, cupMl }: steps.FullCup): boolean =>
  exact(cupMl).gt(0) && isUsualDensity(exact(grossGrams).minus(tareGrams), cupMl);

/** Rounds first, then cup tests: the last of a batch is how it went into its tins. */
async function listCups(db: Reader, batchIds: readonly string[]): Promise<CupsOfBatch[]> {
  const rounds = (await listWhipRounds(db, batchIds))
    .filter((row) => !row.is_struck)
    .map((row) => ({ batchId: row.batch_id, cups: JSON.parse(row.cups) as steps.FullCup[] }));
  const tests = (await listStepsWeighed(db, batchIds)).map((row) => {
    const weighed = JSON.parse(row.weighed) as steps.StepWeighed;
    const { cupMl } = weighed;
    return { batchId: row.batch_id, cups: cupMl === null ? [] : [{ ...weighed, cupMl, tinOf: '' }] };
  });
  return [...rounds, ...tests]
    .map(({ batchId, cups }) => ({ batchId, cups: cups.filter(isTeaching) }))
    .filter(({ cups }) => cups.length > 0);
}

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
    aimGrams: toText(findTinAim(details, tareGrams ?? '0', scales)),
    tareGrams,
    headspacePercent: details.headspacePercent,
    lossPercent: details.bowlLossPercent,
    planned,
    spread: await findSpread(db, row.id),
  };
}

/** Within the newest runs of a product, not between them: how far tins of one filling lie from each other. */
async function findSpread(db: Reader, productId: string): Promise<steps.AirTin['spread']> {
  const runs = (await listRunsOfProduct(db, productId)).slice(0, NEWEST_RUNS);
  const weights = (
    await listFillWeights(
      db,
      runs.map((run) => run.id),
    )
  ).filter((row) => !row.is_struck && !row.is_refilled);
  const pooled = poolSpread(
    runs.map((run) =>
      weights
        .filter((row) => row.filling_run_id === run.id)
        .map((row) => gramsFromMicrograms(row.gross_ug - row.tare_ug)),
    ),
  );
  return pooled
    ? {
        runs: pooled.groups,
        tins: pooled.count,
        degreesOfFreedom: pooled.degreesOfFreedom,
        standardDeviationGrams: pooled.standardDeviation.toNumber(),
      }
    : null;
}
