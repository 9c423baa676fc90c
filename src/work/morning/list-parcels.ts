import type { Saying, trace } from '../../contract/index.ts';
import { nearDay } from '../orders/near-day.ts';
import { viewPromise } from '../orders/promise-orders.ts';
import { saying } from '../saying.ts';
import type { MorningData, OrderInTurn } from './read-morning.ts';
import { titleOf } from './title-of.ts';

/** All that is missing of it stands there in released tins, kept for it or free. */
export const isCovered = ({ served }: OrderInTurn): boolean =>
  served.lines.length > 0 &&
  served.lines.every(({ waiting, inBowl, toMake }) => waiting + inBowl + toMake === 0);

const hasKeptInVain = ({ served }: OrderInTurn): boolean => served.lines.some((line) => line.keptInVain > 0);

/** Parcels that can go, and orders whose day has come and that cannot. */
export function listParcels({ book, orders }: MorningData): trace.MorningLine[] {
  return orders.flatMap((order) => {
    if (isCovered(order)) return [readyLine(book.today, order)];
    if (order.view.wantedBy > book.today) return [];
    const { sentence } = viewPromise(book, order.served);
    return [lineOf(order, 'stop', saying('morning-cannot-go'), 'morning-look', [sentence])];
  });
}

function readyLine(today: string, order: OrderInTurn): trace.MorningLine {
  const { wantedBy } = order.view;
  const wanted = saying('morning-wanted', { wantedBy, wantedByNear: nearDay(wantedBy, today) });
  if (hasKeptInVain(order)) {
    const detail = [saying('morning-keep-others'), wanted];
    return lineOf(order, 'watch', saying('morning-kept-in-vain'), 'morning-look', detail);
  }
  const word = saying(wantedBy < today ? 'morning-ready-late' : 'morning-ready');
  return lineOf(order, 'ready', word, 'morning-pick', [wanted]);
}

function lineOf(
  { view, served }: OrderInTurn,
  state: trace.MorningLine['state'],
  stateWord: Saying,
  action: string,
  detail: readonly Saying[],
): trace.MorningLine {
  const units = served.lines
    .filter((line) => line.open > 0)
    .map((line) => saying('morning-tins-of', { units: line.open, product: line.product.name }));
  return {
    key: `order ${view.id}`,
    title: titleOf('morning-order', {
      number: String(view.number),
      hasCustomer: view.customerName === '' ? 'no' : 'yes',
      customer: view.customerName,
    }),
    state,
    stateWord,
    detail: [...detail, ...units],
    action: { words: saying(action), to: `/orders/${view.id}` },
    level: null,
  };
}
