import type { Market, orders, stock } from '../../contract/index.ts';
import {
  findMaterials,
  findRun,
  type LotAtHand,
  listFillWeights,
  listLabelCopies,
  listLotsAtHand,
  listProducts,
  listReleases,
  listRunCloses,
  listRunCounts,
  listRunReady,
  listRunsOfBatches,
  listScales,
  listTinsOfBatches,
  type Reader,
  type RunCountRow,
  type RunHead,
  type ScaleRow,
  type SignedClose,
  type SignedReady,
  type SignedRelease,
  type SignedWeight,
} from '../../storage/index.ts';
import { countPrinted } from '../labels/count-printed.ts';
import { readProductDetails } from '../read-product-details.ts';
import { clearedMarkets } from './cleared-markets.ts';

/** Everything that is written about one filling run. */
export interface RunRecords {
  readonly head: RunHead;
  /** The product as it stood when the run began. */
  readonly details: orders.ProductDetails;
  /** Those of its product as it began and as it is sold today; once decided upon, those that it was checked for. */
  readonly markets: readonly Market[];
  /** Where its product is sold today. */
  readonly soldIn: readonly Market[];
  readonly scale: ScaleRow | undefined;
  readonly weights: readonly SignedWeight[];
  readonly close: SignedClose | undefined;
  readonly release: SignedRelease | undefined;
  /** The mixture in its bowl. */
  readonly bowl: LotAtHand | undefined;
  /** In tins of other runs from the same bowl that are not closed, and so not booked yet. */
  readonly elsewhereUg: number;
  readonly tins: LotAtHand | undefined;
  /** Of the kind of which there are most. */
  readonly labelsPrinted: number;
  /** What its empty tin is known to weigh. */
  readonly tinGrams: string | null;
  readonly ready: readonly SignedReady[];
  readonly counts: readonly RunCountRow[];
  /** Other runs from the same bowl, in the order of their start. */
  readonly siblings: readonly SiblingRun[];
  /** What the batch was planned for. */
  readonly planned: readonly { readonly product_id: string; product_name: string; units: number }[];
}

export interface SiblingRun {
  readonly head: RunHead;
  readonly name: string;
  readonly weights: readonly SignedWeight[];
  readonly close: SignedClose | undefined;
  readonly release: SignedRelease | undefined;
}

/** A tin that stands: not taken out, and not weighed again since. */
export const isTin = (row: SignedWeight): boolean => !row.is_struck && !row.is_refilled;

/** Taken out, and not put back into the bowl. */
export const isGone = (row: SignedWeight): boolean => row.fate === 'trial' || row.fate === 'binned';

const sumUgOf = (weights: readonly SignedWeight[], counts: (row: SignedWeight) => boolean): number =>
  weights.reduce((sum, row) => (counts(row) ? sum + row.gross_ug - row.tare_ug : sum), 0);

/** In tins that stand. */
export const netUgOf = (weights: readonly SignedWeight[]): number => sumUgOf(weights, isTin);

/** Out of the bowl: in tins, and in what was put aside. */
export const takenUgOf = (weights: readonly SignedWeight[]): number =>
  sumUgOf(weights, (row) => isTin(row) || isGone(row));

export const fateUgOf = (weights: readonly SignedWeight[], fate: 'trial' | 'binned'): number =>
  sumUgOf(weights, (row) => row.fate === fate);

export async function gatherRun(db: Reader, id: string): Promise<RunRecords | undefined> {
  const head = await findRun(db, id);
  return head && (await gatherRuns(db, [head]))[0];
}

/** The records of one run or of fifty with the same dozen queries. */
export async function gatherRuns(db: Reader, heads: readonly RunHead[]): Promise<RunRecords[]> {
  const ids = heads.map((head) => head.id);
  const batchIds = [...new Set(heads.map((head) => head.batch_id))];
  const ofBatches = await listRunsOfBatches(db, batchIds);
  const allIds = [...new Set([...ids, ...ofBatches.map((run) => run.id)])];
  const weights = await listFillWeights(db, allIds);
  const closes = await listRunCloses(db, allIds);
  const releases = await listReleases(db, allIds);
  const planned = await listTinsOfBatches(db, batchIds);
  const ready = await listRunReady(db, ids);
  const counts = await listRunCounts(db, ids);
  const prints = await listLabelCopies(db, ids);
  const scales = await listScales(db);
  const lotIds = [...heads.map((head) => head.bulk_lot_id), ...closes.map((row) => row.lot_id)];
  const lots = await listLotsAtHand(db, { lotIds: [...new Set(lotIds.filter((id) => id !== null))] });
  const products = new Map((await listProducts(db)).map((row) => [row.id, row]));
  const tareOf = await readTares(db, heads);
  const weightsOf = (id: string) => weights.filter((row) => row.filling_run_id === id);
  return heads.map((head) => {
    const close = closes.find((row) => row.filling_run_id === head.id);
    const others = ofBatches.filter((run) => run.batch_id === head.batch_id && run.id !== head.id);
    const open = others.filter((run) => !run.is_closed);
    const asBegun = readProductDetails(head.product_details);
    const release = releases.find((row) => row.filling_run_id === head.id);
    const today = products.get(head.product_id);
    const now = today && readProductDetails(today.details);
    const details = now ? withWordsOf(now, asBegun) : asBegun;
    const soldIn = now ? now.markets : [];
    return {
      head,
      details,
      markets: release ? clearedMarkets(release) : [...new Set([...details.markets, ...soldIn])],
      soldIn,
      scale: scales.find((row) => row.id === head.scale_id),
      weights: weightsOf(head.id),
      close,
      release,
      bowl: lots.find((lot) => lot.id === head.bulk_lot_id),
      elsewhereUg: open.reduce((sum, run) => sum + takenUgOf(weightsOf(run.id)), 0),
      tins: lots.find((lot) => lot.id === close?.lot_id),
      labelsPrinted: countPrinted(prints.filter((row) => row.filling_run_id === head.id)),
      tinGrams: tareOf.get(asBegun.tinId) ?? null,
      ready: ready.filter((row) => row.filling_run_id === head.id),
      counts: counts.filter((row) => row.filling_run_id === head.id),
      siblings: others.map((other) => ({
        head: other,
        name: readProductDetails(other.product_details).name,
        weights: weightsOf(other.id),
        close: closes.find((row) => row.filling_run_id === other.id),
        release: releases.find((row) => row.filling_run_id === other.id),
      })),
      planned: planned.filter((row) => row.batch_id === head.batch_id),
    };
  });
}

async function readTares(db: Reader, heads: readonly RunHead[]): Promise<ReadonlyMap<string, string | null>> {
  const ids = [...new Set(heads.map((head) => readProductDetails(head.product_details).tinId))];
  const tins = await findMaterials(db, ids);
  return new Map(tins.map((tin) => [tin.id, (JSON.parse(tin.details) as stock.MaterialDetails).tareGrams]));
}

/**
 * A run keeps its product as it was begun: content, aim, containers. The words of its label are the product's own as of
 * today: what nobody had said, or had said wrong, can still be put right, and tins are not lost for it.
 */
const withWordsOf = (now: orders.ProductDetails, asBegun: orders.ProductDetails): orders.ProductDetails => ({
  ...asBegun,
  functionText: now.functionText || asBegun.functionText,
  precautions: now.precautions || asBegun.precautions,
  saleCountries: now.saleCountries,
  scentOnLabel: now.scentOnLabel,
  noOpenedPeriod: now.noOpenedPeriod,
});
