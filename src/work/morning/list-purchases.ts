import type { Saying, trace } from '../../contract/index.ts';
import { exact, gramsFromMicrograms, largest, roundToStep, toText } from '../../core/quantity/index.ts';
import type { GoodsOrderedRow } from '../../storage/index.ts';
import { nearDay } from '../orders/near-day.ts';
import type { BookMaterial } from '../orders/read-order-book.ts';
import { usableStock } from '../orders/usable-stock.ts';
import { viewGoods } from '../orders/view-goods.ts';
import { saying } from '../saying.ts';
import type { MorningData } from './read-morning.ts';

/** What open orders are short of, and what is under the level at which it is bought again; what is on its way last. */
export function listPurchases(data: MorningData): trace.PurchaseLine[] {
  const purchases = [...data.book.materials.values()].flatMap((material) => purchaseOf(data, material));
  const rank = (line: trace.MorningLine) => RANKS.indexOf(line.state);
  return purchases.sort((one, other) => rank(one) - rank(other) || one.title.localeCompare(other.title));
}

const RANKS: readonly trace.MorningLine['state'][] = ['stop', 'watch', 'going', 'ready'];

function purchaseOf(data: MorningData, material: BookMaterial): trace.PurchaseLine[] {
  const { id, name, details } = material;
  const unit = details.kind === 'packaging' ? 'pieces' : 'g';
  const inUnit = (quantity: number) =>
    unit === 'g' ? roundToStep(gramsFromMicrograms(quantity), '0.01', 'up') : exact(quantity);
  const short = inUnit(data.needs.short.get(id) ?? 0);
  const needed = inUnit(data.needs.amounts.get(id) ?? 0);
  const have =
    unit === 'g' ? gramsFromMicrograms(usableStock(data.book, id)) : exact(usableStock(data.book, id));
  const reorderBelow = exact(details.reorderBelow ?? 0);
  const isShort = short.gt(0);
  if (!isShort && !have.lt(reorderBelow)) return [];
  const facts = { have: toText(have), needed: toText(needed), unit };
  const ordered = data.book.onTheirWay.get(id);
  return [
    {
      key: `buy ${id}`,
      title: name,
      ...(ordered
        ? stateOnItsWay(ordered, data.book.today)
        : {
            state: isShort ? 'stop' : 'watch',
            stateWord: saying(isShort ? 'morning-short' : 'morning-low'),
          }),
      detail: [
        ...(ordered ? [sayOrdered(ordered, data.book.today)] : []),
        isShort
          ? saying('morning-buy-short', { ...facts, short: toText(short) })
          : saying('morning-buy-low', { ...facts, reorderBelow: toText(reorderBelow) }),
        ...(isShort ? sayFirstWaiting(data, id) : []),
        ...(ordered ? [] : sayPack(details, unit)),
      ],
      action: { words: saying('morning-to-shelf'), to: '/shelf' },
      level: { have: toText(have), full: toText(largest(have, needed, reorderBelow)), unit },
      materialId: id,
      supplier: details.supplier,
      onItsWay: viewGoods(ordered),
    },
  ];
}

/** What should have come by now is to be asked after. */
function stateOnItsWay({ expected_on }: GoodsOrderedRow, today: string) {
  const isLate = expected_on !== null && expected_on < today;
  return isLate
    ? { state: 'watch' as const, stateWord: saying('morning-goods-late') }
    : { state: 'going' as const, stateWord: saying('morning-on-its-way') };
}

function sayOrdered({ ordered_on, supplier, expected_on }: GoodsOrderedRow, today: string): Saying {
  const expected = expected_on ?? today;
  return saying('morning-ordered', {
    orderedOn: ordered_on,
    supplier,
    hasSupplier: supplier === '' ? 'no' : 'yes',
    expectedOn: expected,
    expectedOnNear: expected_on === null ? 'none' : nearDay(expected, today),
    isPast: expected < today ? 'yes' : 'no',
  });
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
