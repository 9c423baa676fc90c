import type { z } from 'zod';
import type { orders } from '../../contract/index.ts';
import {
  type LotUnits,
  listCustomers,
  listOrderLines,
  listProducts,
  listReserved,
  listSent,
  type OrderLineRow,
  type OrderRow,
  type Reader,
} from '../../storage/index.ts';
import { viewParcels } from './view-parcels.ts';

export type OrderView = z.output<typeof orders.orderView>;

/** Rows of one key together; Map.groupBy is younger than Node 20. */
function groupBy<Row>(rows: readonly Row[], keyOf: (row: Row) => string): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group) group.push(row);
    else groups.set(keyOf(row), [row]);
  }
  return groups;
}

const lotUnits = (rows: readonly LotUnits[] | undefined) =>
  (rows ?? [])
    .filter((row) => row.units > 0)
    .map((row) => ({ lotId: row.lot_id, lotNumber: row.lot_number, units: Number(row.units) }));

const total = (rows: readonly { units: number }[]): number => rows.reduce((sum, row) => sum + row.units, 0);

function stateOf(order: OrderRow, lines: OrderView['lines']): OrderView['state'] {
  if (order.cancelled === 1) return 'cancelled';
  const sent = lines.reduce((sum, line) => sum + total(line.sent), 0);
  const wanted = lines.reduce((sum, line) => sum + line.units, 0);
  if (sent === 0) return 'open';
  return sent >= wanted ? 'sent' : 'part-sent';
}

/** Orders as the pages show them, built with a handful of queries however many there are. */
export async function viewOrders(db: Reader, rows: readonly OrderRow[]): Promise<OrderView[]> {
  const lines = await listOrderLines(
    db,
    rows.map((row) => row.id),
  );
  const lineIds = lines.map((line) => line.id);
  const reserved = groupBy(await listReserved(db, lineIds), (row) => row.order_line_id);
  const sent = groupBy(await listSent(db, lineIds), (row) => row.order_line_id);
  const parcels = await viewParcels(
    db,
    rows.map((row) => row.id),
  );
  const linesOf = groupBy(lines, (line) => line.order_id);
  const customers = new Map((await listCustomers(db)).map((row) => [row.id, row]));
  const products = new Map((await listProducts(db)).map((row) => [row.id, row.name]));
  const viewLine = (line: OrderLineRow) => ({
    id: line.id,
    productId: line.product_id,
    productName: products.get(line.product_id) ?? '',
    units: line.units,
    reserved: lotUnits(reserved.get(line.id)),
    sent: lotUnits(sent.get(line.id)),
  });
  return rows.map((row) => {
    const own = (linesOf.get(row.id) ?? []).map(viewLine);
    return {
      id: row.id,
      number: row.number,
      version: row.version,
      customerId: row.customer_id,
      customerName: customers.get(row.customer_id ?? '')?.name ?? '',
      customerAddress: customers.get(row.customer_id ?? '')?.address ?? '',
      placedOn: row.placed_on,
      wantedBy: row.wanted_by,
      note: row.note,
      state: stateOf(row, own),
      lines: own,
      parcels: parcels.get(row.id) ?? [],
    };
  });
}
