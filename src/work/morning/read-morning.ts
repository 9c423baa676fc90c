import {
  listOpenClaims,
  listRunsAtHand,
  listScales,
  type RunHead,
  type ScaleRow,
  type SignedClaim,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { type OpenNeeds, sumNeeds } from '../orders/needs.ts';
import type { OrderView } from '../orders/order-view.ts';
import { type OrderBook, readOrderBook } from '../orders/read-order-book.ts';
import { serveChecked } from '../orders/serve-checked.ts';
import { listOrdersToServe, type ServedOrder } from '../orders/serve-orders.ts';

export interface OrderInTurn {
  readonly view: OrderView;
  readonly served: ServedOrder;
}

/** Everything that the morning looks at, read with the same few queries however much there is. */
export interface MorningData {
  readonly book: OrderBook;
  /** Open orders, the next promised first, each with what the earlier ones left for it. */
  readonly orders: readonly OrderInTurn[];
  readonly needs: OpenNeeds;
  /** Filling runs that nobody has decided yet. */
  readonly runs: readonly RunHead[];
  readonly scales: readonly ScaleRow[];
  /** What tablets did while they were away and nobody has answered. */
  readonly claims: readonly SignedClaim[];
}

export async function readMorning(context: Context): Promise<MorningData> {
  const book = await readOrderBook(context);
  const served = await serveChecked(context, book, listOrdersToServe(book));
  const runs = await listRunsAtHand(context.storage.db, 0);
  return {
    book,
    orders: book.orders.flatMap((view, index) => {
      const own = served[index];
      return own ? [{ view, served: own }] : [];
    }),
    needs: sumNeeds(book, served),
    runs: runs.filter((run) => run.verdict === null),
    scales: await listScales(context.storage.db),
    claims: await listOpenClaims(context.storage.db),
  };
}
