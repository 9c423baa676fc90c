import { sizeBatch } from '../../core/filling/index.ts';
import { type Exact, exact, ZERO } from '../../core/quantity/index.ts';
import type { BookProduct } from './read-order-book.ts';

/** Batches are taken up to the next tenth of a gram: finer steps no bench scale shows (common practice, no source). */
const STEP_GRAMS = '0.1';

interface Wish {
  readonly product: BookProduct;
  readonly wanted: number;
}

/**
 * What the mixtures of all orders together take: one batch of each mixture, its sample kept and its bowl's loss counted
 * once. An order is charged with what the batch grows by.
 */
export class Makings {
  readonly #wishes = new Map<string, Wish[]>();
  readonly #sized = new Map<string, Exact>();

  /** Grams of the mixture that these tins add; undefined where no batch can be sized, since all of it stays in the bowl. */
  add(product: BookProduct, units: number): Exact | undefined {
    const before = this.#wishes.get(product.formulaId) ?? [];
    const known = before.find((wish) => wish.product.id === product.id);
    const wishes = [
      ...before.filter((wish) => wish !== known),
      { product, wanted: (known?.wanted ?? 0) + units },
    ];
    const grams = sizeAll(wishes);
    if (grams === undefined) return undefined;
    const more = grams.minus(this.#sized.get(product.formulaId) ?? ZERO);
    this.#wishes.set(product.formulaId, wishes);
    this.#sized.set(product.formulaId, grams);
    return more;
  }
}

function sizeAll(wishes: readonly Wish[]): Exact | undefined {
  const greatest = (values: readonly string[]): Exact =>
    values.reduce((most, value) => (exact(value).gt(most) ? exact(value) : most), ZERO);
  const sized = sizeBatch({
    lines: wishes.map(({ product, wanted }) => ({ key: product.id, wanted, aimGrams: product.aimGrams })),
    bowlLossFraction: greatest(wishes.map(({ product }) => product.details.bowlLossPercent)).div(100),
    retainedGrams: greatest(wishes.map(({ product }) => product.details.retainedGrams)),
    limits: [],
    stepGrams: STEP_GRAMS,
  });
  return sized.ok ? sized.value.batchGrams : undefined;
}
