import { problem, type Result, refused } from '../../core/problem.ts';
import { buildPackingSlip, buildPickList, type Paper as Layout } from '../../print/layout/index.ts';
import {
  findCustomer,
  findProduct,
  type LotAtHand,
  listLotsAtHand,
  listPlaces,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { localDate, workshopToday, workshopZone } from '../local-date.ts';
import { painter } from '../painter.ts';
import type { Paper, UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
import { viewOne } from './get-order.ts';
import type { OrderView } from './order-view.ts';

/** What to take from which place: what is kept for the order and not sent yet. */
export const getPickList: UseCase<'getPickList'> = async (context, { params }) => {
  const order = await viewOne(context, params.id ?? '');
  if (!order.ok) return order;
  const rows = rowsOf(order.value, 'reserved');
  if (rows.length === 0)
    return refused(problem('nothing-kept-to-pick', 'order', { found: String(order.value.number) }));
  const lots = await lotsOf(context, rows);
  const places = new Map((await listPlaces(context.storage.db)).map((place) => [place.id, place.name]));
  return paint(
    `pick-list-${order.value.number}.pdf`,
    buildPickList({
      workshopName: (await workshopDetails(context)).name,
      orderNumber: String(order.value.number),
      customerName: order.value.customerName,
      sendBy: order.value.wantedBy,
      lines: rows.map((row) => ({
        productName: row.productName,
        units: row.units,
        batchNumber: row.lotNumber,
        place: places.get(lots.get(row.lotId)?.places[0]?.place_id ?? '') ?? '',
        ...endOf(lots.get(row.lotId)),
      })),
      notes: order.value.note === '' ? [] : [order.value.note],
      createdAt: context.machine.now(),
    }),
  );
};

/** What lies in the parcel: what is kept for the order, or, once it went, what was sent. */
export const getPackingSlip: UseCase<'getPackingSlip'> = async (context, { params }) => {
  const order = await viewOne(context, params.id ?? '');
  if (!order.ok) return order;
  const kept = rowsOf(order.value, 'reserved');
  const rows = kept.length > 0 ? kept : rowsOf(order.value, 'sent');
  if (rows.length === 0)
    return refused(problem('nothing-kept-to-pick', 'order', { found: String(order.value.number) }));
  const lots = await lotsOf(context, rows);
  const details = await workshopDetails(context);
  const contents = await contentsOf(context, order.value);
  return paint(
    `packing-slip-${order.value.number}.pdf`,
    buildPackingSlip({
      sender: {
        name: details.responsibleGb.name || details.name,
        addressLines: linesOf(details.responsibleGb.address),
      },
      customer: await addresseeOf(context, order.value),
      orderNumber: String(order.value.number),
      placedOn: order.value.placedOn,
      ...(await dayOf(context, order.value, kept.length === 0)),
      lines: rows.map((row) => ({
        productName: row.productName,
        declaredContent: contents.get(row.productId) ?? '',
        units: row.units,
        batchNumber: row.lotNumber,
        ...endOf(lots.get(row.lotId)),
      })),
      createdAt: context.machine.now(),
    }),
  );
};

/** A slip that is printed again bears the day on which the parcel went. */
async function dayOf(context: Context, { parcels }: OrderView, isAllSent: boolean) {
  const last = isAllSent ? parcels.findLast((parcel) => !parcel.isTakenBack) : undefined;
  return last
    ? { hasGone: true, date: localDate(last.sentAt, await workshopZone(context)) }
    : { hasGone: false, date: await workshopToday(context) };
}

const rowsOf = (order: OrderView, which: 'reserved' | 'sent') =>
  order.lines.flatMap((line) =>
    line[which].map((row) => ({ ...row, productId: line.productId, productName: line.productName })),
  );

const endOf = (lot: LotAtHand | undefined) => (lot?.best_before ? { bestBefore: lot.best_before } : {});

const linesOf = (address: string): string[] =>
  address
    .split(/[\n,]/)
    .map((line) => line.trim())
    .filter((line) => line !== '');

async function lotsOf(
  { storage }: Context,
  rows: readonly { lotId: string }[],
): Promise<Map<string, LotAtHand>> {
  const lots = await listLotsAtHand(storage.db, { lotIds: [...new Set(rows.map((row) => row.lotId))] });
  return new Map(lots.map((lot) => [lot.id, lot]));
}

async function contentsOf({ storage }: Context, order: OrderView): Promise<Map<string, string>> {
  const contents = new Map<string, string>();
  for (const line of order.lines) {
    const product = await findProduct(storage.db, line.productId);
    const declared = product && (JSON.parse(product.details) as { declaredGrams: string }).declaredGrams;
    contents.set(line.productId, declared === undefined ? '' : `${declared} g`);
  }
  return contents;
}

/** A sale at the stall has no name, and an erased customer none any more. */
async function addresseeOf({ storage }: Context, order: OrderView) {
  const customer = order.customerId === null ? undefined : await findCustomer(storage.db, order.customerId);
  return { name: customer?.name ?? '', addressLines: linesOf(customer?.address ?? '') };
}

async function paint(fileName: string, layout: Layout): Promise<Result<Paper>> {
  const { paintPaperPdf } = await painter();
  const bytes = await paintPaperPdf(layout);
  return bytes.ok ? { ok: true, value: { fileName, bytes: bytes.value } } : bytes;
}
