import { problem } from '../../core/problem.ts';
import {
  findCustomer,
  findOrder,
  findProduct,
  giveUp,
  insertOrder,
  listOrderLines,
  nextOrderNumber,
  type OrderLineRow,
  type OrderRow,
  replaceOrderLines,
  updateOrder,
  type Writer,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { viewOrders } from './order-view.ts';

type Body = RequestOf<'saveOrder'>['body'];

export const saveOrder: UseCase<'saveOrder'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const id = body.id ?? context.machine.newId();
      await refuseUnfit(tx, body);
      const before = body.id === undefined ? undefined : await findChangeable(tx, body.id);
      await tell({
        kind: before ? 'order-changed' : 'order-entered',
        subjectKind: 'order',
        subjectId: id,
        payload: {
          customerId: body.customerId,
          placedOn: body.placedOn,
          wantedBy: body.wantedBy,
          hasNote: body.note !== '',
          noteChanged: body.note !== (before?.note ?? ''),
          lines: body.lines,
        },
      });
      if (before) await changeOrder(tx, before, body, context.machine.newId);
      else await addOrder(tx, id, body, context.machine.newId);
      return id;
    },
    viewId,
  );

async function refuseUnfit(tx: Writer, body: Body): Promise<void> {
  if (body.wantedBy < body.placedOn) {
    giveUp(problem('wanted-before-placed', 'wantedBy', { found: body.wantedBy, allowed: body.placedOn }));
  }
  if (body.customerId !== null && !(await findCustomer(tx, body.customerId)))
    giveUp(thingNotFound('customerId', body.customerId));
  const seen = new Set<string>();
  for (const [index, line] of body.lines.entries()) {
    const product = await findProduct(tx, line.productId);
    const where = `lines[${index}].productId`;
    if (!product) giveUp(thingNotFound(where, line.productId));
    if (seen.has(line.productId)) giveUp(problem('product-twice', where, { found: product.name }));
    seen.add(line.productId);
    const isWithdrawn = (JSON.parse(product.details) as { isWithdrawn: boolean }).isWithdrawn;
    if (isWithdrawn && body.id === undefined)
      giveUp(problem('product-withdrawn', where, { found: product.name }));
  }
}

async function findChangeable(tx: Writer, id: string): Promise<OrderRow> {
  const order = await findOrder(tx, id);
  if (!order) giveUp(thingNotFound('id', id));
  if (order.cancelled === 1) giveUp(problem('order-cancelled', 'id', { found: String(order.number) }));
  return order;
}

async function addOrder(tx: Writer, id: string, body: Body, newId: () => string): Promise<void> {
  const order = {
    id,
    number: await nextOrderNumber(tx),
    customer_id: body.customerId,
    placed_on: body.placedOn,
    wanted_by: body.wantedBy,
    note: body.note,
    cancelled: 0,
    cancelled_because: '',
    version: 1,
  };
  await insertOrder(tx, order, linesOf(id, body, [], newId));
}

/** A line keeps its id while its product stays, so that what is kept or sent for it stays with it. */
const linesOf = (
  orderId: string,
  body: Body,
  before: readonly OrderLineRow[],
  newId: () => string,
): OrderLineRow[] =>
  body.lines.map((line, position) => ({
    id: before.find((row) => row.product_id === line.productId)?.id ?? newId(),
    order_id: orderId,
    position,
    product_id: line.productId,
    units: line.units,
  }));

async function changeOrder(tx: Writer, before: OrderRow, body: Body, newId: () => string): Promise<void> {
  const lines = linesOf(before.id, body, await listOrderLines(tx, [before.id]), newId);
  await refuseBelowKept(tx, before, lines);
  const row = {
    ...before,
    customer_id: body.customerId,
    placed_on: body.placedOn,
    wanted_by: body.wantedBy,
    note: body.note,
  };
  if (body.version === undefined || !(await updateOrder(tx, row, body.version))) {
    giveUp(changedMeanwhile(`order ${before.number}`, body.version, before.version, before.wanted_by));
  }
  await replaceOrderLines(tx, before.id, lines);
}

/** What was sent or is kept for a line cannot be ordered away. */
async function refuseBelowKept(tx: Writer, order: OrderRow, lines: readonly OrderLineRow[]): Promise<void> {
  const [view] = await viewOrders(tx, [order]);
  for (const line of view?.lines ?? []) {
    const bound = [...line.reserved, ...line.sent].reduce((sum, row) => sum + row.units, 0);
    const now = lines.find((row) => row.id === line.id)?.units ?? 0;
    if (now < bound)
      giveUp(
        problem('line-below-kept', 'lines', {
          found: now,
          allowed: bound,
          parameters: { product: line.productName },
        }),
      );
  }
}
