import type { Saying, trace } from '../../contract/index.ts';
import { exact, gramsFromMicrograms, largest, roundToStep, toText } from '../../core/quantity/index.ts';
import { isUsable } from '../lot-use.ts';
import { nearDay } from '../orders/near-day.ts';
import type { BookMaterial } from '../orders/read-order-book.ts';
import { saying } from '../saying.ts';
import type { MorningData } from './read-morning.ts';

/** What open orders are short of, and what is under the level at which it is bought again. */
export function listPurchases(data: MorningData): trace.MorningLine[] {
  const purchases = [...data.book.materials.values()].flatMap((material) => purchaseOf(data, material));
  const rank = (line: trace.MorningLine) => (line.state === 'stop' ? 0 : 1);
  return purchases.sort((one, other) => rank(one) - rank(other) || one.title.localeCompare(other.title));
}

function purchaseOf(data: MorningData, material: BookMaterial): trace.MorningLine[] {
  const { id, name, details } = material;
  const unit = details.kind === 'packaging' ? 'pieces' : 'g';
  const inUnit = (quantity: number) =>
    unit === 'g' ? roundToStep(gramsFromMicrograms(quantity), '0.01', 'up') : exact(quantity);
  const short = inUnit(data.needs.short.get(id) ?? 0);
  const needed = inUnit(data.needs.amounts.get(id) ?? 0);
  const have = unit === 'g' ? gramsFromMicrograms(usableOf(data, id)) : exact(usableOf(data, id));
  const reorderBelow = exact(details.reorderBelow ?? 0);
  const isShort = short.gt(0);
  if (!isShort && !have.lt(reorderBelow)) return [];
  const facts = { have: toText(have), needed: toText(needed), unit };
  return [
    {
      key: `buy ${id}`,
      title: name,
      state: isShort ? 'stop' : 'watch',
      stateWord: saying(isShort ? 'morning-short' : 'morning-low'),
      detail: [
        isShort
          ? saying('morning-buy-short', { ...facts, short: toText(short) })
          : saying('morning-buy-low', { ...facts, reorderBelow: toText(reorderBelow) }),
        ...(isShort ? sayFirstWaiting(data, id) : []),
        ...sayPack(details, unit),
      ],
      action: { words: saying('morning-to-shelf'), to: '/shelf' },
      level: { have: toText(have), full: toText(largest(have, needed, reorderBelow)), unit },
    },
  ];
}

/** Released and within its date, less what batches under way have still to take. */
function usableOf({ book }: MorningData, itemId: string): number {
  return book.lots
    .filter((lot) => lot.item_id === itemId && isUsable(lot, book.today))
    .reduce((sum, lot) => sum + Math.max(0, lot.on_hand - (book.stillToWeigh.get(lot.id) ?? 0)), 0);
}

function sayFirstWaiting({ book, orders }: MorningData, itemId: string): Saying[] {
  const first = orders.find(({ served }) =>
    served.nets.some((net) => net.item.itemId === itemId && !net.short.isZero()),
  );
  if (!first) return [];
  const { number, wantedBy } = first.view;
  const wanted = { wantedBy, wantedByNear: nearDay(wantedBy, book.today) };
  return [saying('morning-buy-for', { number: String(number), ...wanted })];
}

function sayPack({ packSize, leadDays }: BookMaterial['details'], unit: string): Saying[] {
  return [
    ...(packSize === null ? [] : [saying('morning-buy-pack', { packSize, unit })]),
    leadDays === null ? saying('morning-lead-unknown') : saying('morning-buy-lead', { days: leadDays }),
  ];
}
