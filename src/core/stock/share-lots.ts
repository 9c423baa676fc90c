import { type Exact, type ExactInput, exact, ONE, ZERO } from '../quantity/index.ts';

/** `quantity` of one lot went into another, in the unit of the lot that was used. */
export interface LotUse {
  readonly usedLot: string;
  readonly madeLot: string;
  readonly quantity: ExactInput;
}

/**
 * How much of each lot behind a lot is in it, each in its own unit: of a base of which only a part was used, the same
 * part of everything that the base was made of.
 *
 * amount(u) = sum over m made of u: quantity(u, m) x share(m); share(start) = 1, share(m) = amount(m) / made(m).
 * What a bowl kept is thus borne by what came out of it. Valid where each lot's made quantity is above nought; of a lot
 * of which none is known to have come in the share is unknown, and so is what lies behind it: left out.
 * Source: material balance with proportional allocation (common practice, no source).
 */
export function shareLots(
  start: string,
  uses: readonly LotUse[],
  madeOf: ReadonlyMap<string, ExactInput>,
): Map<string, Exact> {
  const usesOf = new Map<string, LotUse[]>();
  for (const use of uses) usesOf.set(use.usedLot, [...(usesOf.get(use.usedLot) ?? []), use]);
  const amounts = new Map<string, Exact | null>();
  const shareOf = (lot: string): Exact | null => {
    if (lot === start) return ONE;
    const amount = amountOf(lot);
    const made = exact(madeOf.get(lot) ?? 0);
    return amount === null || !made.gt(0) ? null : amount.div(made);
  };
  const amountOf = (lot: string): Exact | null => {
    const known = amounts.get(lot);
    if (known !== undefined) return known;
    // A lot cannot be made of itself; were it ever written so, its own part counts as unknown.
    amounts.set(lot, null);
    let sum: Exact | null = ZERO;
    for (const { madeLot, quantity } of usesOf.get(lot) ?? []) {
      const share = shareOf(madeLot);
      sum = sum === null || share === null ? null : sum.plus(share.times(quantity));
    }
    amounts.set(lot, sum);
    return sum;
  };
  const found = [...usesOf.keys()].map((lot) => [lot, amountOf(lot)] as const);
  return new Map(found.flatMap(([lot, amount]) => (amount === null ? [] : [[lot, amount] as const])));
}
