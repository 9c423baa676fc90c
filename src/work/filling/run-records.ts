import type { Market, orders } from '../../contract/index.ts';
import {
  findRun,
  type LotAtHand,
  listFillWeights,
  listLabelCopies,
  listLotsAtHand,
  listOpenRuns,
  listProducts,
  listReleases,
  listRunCloses,
  listScales,
  type Reader,
  type RunHead,
  type ScaleRow,
  type SignedClose,
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
}

export const netUgOf = (weights: readonly SignedWeight[]): number =>
  weights.reduce((sum, row) => (row.is_struck ? sum : sum + row.gross_ug - row.tare_ug), 0);

export async function gatherRun(db: Reader, id: string): Promise<RunRecords | undefined> {
  const head = await findRun(db, id);
  return head && (await gatherRuns(db, [head]))[0];
}

/** The records of one run or of fifty with the same nine queries. */
export async function gatherRuns(db: Reader, heads: readonly RunHead[]): Promise<RunRecords[]> {
  const ids = heads.map((head) => head.id);
  const open = await listOpenRuns(db, [...new Set(heads.map((head) => head.batch_id))]);
  const weights = await listFillWeights(db, [...new Set([...ids, ...open.map((run) => run.id)])]);
  const closes = await listRunCloses(db, ids);
  const releases = await listReleases(db, ids);
  const prints = await listLabelCopies(db, ids);
  const scales = await listScales(db);
  const lotIds = [...heads.map((head) => head.bulk_lot_id), ...closes.map((row) => row.lot_id)];
  const lots = await listLotsAtHand(db, { lotIds: [...new Set(lotIds.filter((id) => id !== null))] });
  const products = new Map((await listProducts(db)).map((row) => [row.id, row]));
  const weightsOf = (id: string) => weights.filter((row) => row.filling_run_id === id);
  return heads.map((head) => {
    const close = closes.find((row) => row.filling_run_id === head.id);
    const others = open.filter((run) => run.batch_id === head.batch_id && run.id !== head.id);
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
      elsewhereUg: others.reduce((sum, run) => sum + netUgOf(weightsOf(run.id)), 0),
      tins: lots.find((lot) => lot.id === close?.lot_id),
      labelsPrinted: countPrinted(prints.filter((row) => row.filling_run_id === head.id)),
    };
  });
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
