import type { Order } from './order.ts';

const total = (rows: readonly { readonly units: number }[]): number =>
  rows.reduce((sum, { units }) => sum + units, 0);

/** Pieces of an order: ordered, kept on the shelf for it, sent. */
export const countUnits = ({ lines }: Pick<Order, 'lines'>) => ({
  ordered: total(lines),
  kept: total(lines.flatMap(({ reserved }) => reserved)),
  sent: total(lines.flatMap(({ sent }) => sent)),
});
