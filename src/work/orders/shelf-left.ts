import { exact, gramsFromMicrograms, MICROGRAMS_PER_GRAM, ONE } from '../../core/quantity/index.ts';
import { chooseFirstExpiry, type NetNeed, type PromiseLot } from '../../core/stock/index.ts';
import type { LotAtHand } from '../../storage/index.ts';
import { isPastKeeping } from '../lot-use.ts';
import { addHours } from './add-hours.ts';
import { isWaiting } from './is-waiting.ts';
import { mayGo } from './may-go.ts';
import type { BookProduct, OrderBook } from './read-order-book.ts';

/** Tins that an order can have: finished, waiting for their release, or still in a bowl. */
export interface TinsDrawn {
  /** Finished and free, before any were drawn. */
  readonly onShelf: number;
  readonly free: number;
  readonly waiting: number;
  readonly inBowl: number;
}

/**
 * What is left of the lots while orders take their parts, the earlier promised first, so that nothing is counted
 * twice. Lots go by their number, batches that are still being made by theirs.
 */
export class ShelfLeft {
  readonly #book: OrderBook;
  readonly #left: Map<string, number>;
  readonly #takers = new Map<string, number[]>();

  constructor(book: OrderBook) {
    this.#book = book;
    const bound = (lot: LotAtHand) => (book.kept.get(lot.id) ?? 0) + (book.stillToWeigh.get(lot.id) ?? 0);
    this.#left = new Map([
      ...book.lots.map((lot) => [lot.number, Math.max(0, lot.on_hand - bound(lot))] as const),
      ...book.batches.map((batch) => [batch.number, batch.planned_ug] as const),
    ]);
  }

  /** Finished tins first, then tins that only lack a release, then what a bowl holds or is being made. */
  drawTins(product: BookProduct, units: number): TinsDrawn {
    const own = this.#book.lots.filter((lot) => lot.item_kind === 'product' && lot.item_id === product.id);
    const finished = own.filter((lot) => mayGo(this.#book, lot));
    const onShelf = finished.reduce((sum, lot) => sum + this.#of(lot.number), 0);
    const free = this.#drawPieces(finished, units);
    const waiting = this.#drawPieces(
      own.filter((lot) => isWaiting(this.#book, lot)),
      units - free,
    );
    return { onShelf, free, waiting, inBowl: this.#drawBowls(product, units - free - waiting) };
  }

  #drawPieces(lots: readonly LotAtHand[], units: number): number {
    let missing = units;
    for (const { number } of lots) missing -= this.#take(number, Math.min(missing, this.#of(number)));
    return units - missing;
  }

  /** Whole tins at the aimed fill, with what such a bowl is known to lose. */
  #drawBowls({ formulaId, aimGrams, details }: BookProduct, units: number): number {
    const { lots, batches } = this.#book;
    const keeps = ONE.minus(exact(details.bowlLossPercent).div(100));
    const perTin = aimGrams.times(MICROGRAMS_PER_GRAM).div(keeps).ceil().toNumber();
    const bowls = [
      ...lots.filter((lot) => lot.item_id === formulaId && mayGo(this.#book, lot)),
      ...batches.filter((batch) => batch.formula_id === formulaId && batch.purpose === 'sale'),
    ];
    let missing = units;
    for (const { number } of bowls) {
      const tins = Math.min(missing, Math.floor(this.#of(number) / perTin));
      if (tins > 0) this.#take(number, tins * perTin);
      missing -= tins;
    }
    return units - missing;
  }

  /** The lots of something that goes into a batch or onto a tin, as the promise sees them. */
  lotsOf(itemId: string): PromiseLot[] {
    const { lots, batches, now } = this.#book;
    const making = batches.filter((batch) => batch.formula_id === itemId && batch.purpose === 'sale');
    return [
      ...lots.filter((lot) => lot.item_id === itemId).flatMap((lot) => this.#promiseLot(lot)),
      ...making.map(({ number, revision_details }) => {
        const { settingHours } = JSON.parse(revision_details) as SettingOnly;
        return {
          lot: number,
          quantity: gramsFromMicrograms(this.#of(number)),
          bestBefore: null,
          received: null,
          status: 'quarantine' as const,
          firm: { from: addHours(now, settingHours?.least ?? 0), to: addHours(now, settingHours?.most ?? 0) },
          awaitsRelease: false,
        };
      }),
    ].filter(({ quantity }) => Number(quantity) > 0);
  }

  #promiseLot(lot: LotAtHand): PromiseLot[] {
    const { today, olderBases, stoppedBehind } = this.#book;
    if (olderBases.has(lot.id) || stoppedBehind.has(lot.id)) return [];
    const left = this.#of(lot.number);
    const seen = {
      lot: lot.number,
      quantity: lot.unit === 'g' ? gramsFromMicrograms(left) : left,
      bestBefore: lastDayOf(lot, today),
      received: lot.since,
      awaitsRelease: false,
    };
    if (mayGo(this.#book, lot)) return [{ ...seen, status: 'released', firm: null }];
    if (lot.firm_from === null || !isSetting(lot)) return [];
    return [
      { ...seen, status: 'quarantine', firm: { from: lot.firm_from, to: lot.firm_to ?? lot.firm_from } },
    ];
  }

  /** Numbers of the orders that took of it so far. */
  takenBy(itemId: string): readonly number[] {
    return [...(this.#takers.get(itemId) ?? [])];
  }

  /** Books what was netted off the lots that it came from. */
  take(nets: readonly NetNeed[], orderNumber: number): void {
    for (const { item, ready, setting } of nets) {
      if (ready.gt(0)) this.#takers.set(item.itemId, [...(this.#takers.get(item.itemId) ?? []), orderNumber]);
      const released = item.lots.filter((lot) => lot.firm === null);
      const chosen = chooseFirstExpiry(released, ready, this.#book.today);
      const issues = [...(chosen.ok ? chosen.value.issue : []), ...setting];
      const step = item.unit === 'g' ? MICROGRAMS_PER_GRAM : 1;
      for (const { lot, quantity } of issues) this.#take(lot, quantity.times(step).ceil().toNumber());
    }
  }

  #of(number: string): number {
    return this.#left.get(number) ?? 0;
  }

  #take(number: string, quantity: number): number {
    this.#left.set(number, Math.max(0, this.#of(number) - quantity));
    return quantity;
  }
}

interface SettingOnly {
  readonly settingHours: { readonly least: number; readonly most: number } | null;
}

const isSetting = (lot: LotAtHand): boolean =>
  lot.made_as !== 'trial' &&
  lot.firm_said_at === null &&
  (lot.status === 'quarantine' || lot.status === 'released');

/** A keep-until date counts until somebody looked again after it. */
const lastDayOf = (lot: LotAtHand, today: string): string | null => {
  const kept = lot.keep_until !== null && lot.keep_until < today && !isPastKeeping(lot, today);
  return kept ? lot.best_before : (lot.best_before ?? lot.keep_until);
};
