import { Temporal } from 'temporal-polyfill';
import type { Saying } from '../../contract/index.ts';
import type { LotAtHand } from '../../storage/index.ts';
import { isPastKeeping } from '../lot-use.ts';
import { amountText } from '../quantity-text.ts';
import { saying } from '../saying.ts';

/** One thing on the shelf with what is wanted of it, in micrograms or pieces. */
export interface ShelfCount {
  readonly group: 'ingredient' | 'packaging' | 'base' | 'product';
  readonly unit: 'g' | 'pieces';
  /** Lots of which something stands, the first to end first. */
  readonly lots: readonly LotAtHand[];
  readonly onHand: number;
  readonly usable: number;
  readonly needed: number;
  readonly short: number;
  readonly reorderBelow: number | null;
  readonly today: string;
}

export interface ShelfState {
  readonly state: 'ready' | 'watch' | 'stop' | 'going';
  readonly sentence: Saying;
}

/** How long before its end a lot is called to be used first (common practice, no source). */
const SOON_DAYS = 30;

type Look = (count: ShelfCount) => ShelfState | undefined;

/** What a maker should hear first of one thing: the first that applies. */
export function judgeShelf(count: ShelfCount): ShelfState {
  for (const look of LOOKS) {
    const state = look(count);
    if (state) return state;
  }
  return { state: 'ready', sentence: saying(count.needed > 0 ? 'shelf-enough' : 'shelf-here') };
}

export const endOfLot = (lot: LotAtHand): string | null => lot.best_before ?? lot.keep_until;

const isOver = (lot: LotAtHand, today: string): boolean =>
  (lot.best_before !== null && lot.best_before < today) || isPastKeeping(lot, today);

const short: Look = ({ short, unit }) =>
  short > 0
    ? { state: 'stop', sentence: saying('shelf-short', { amount: amountText(short, unit), unit }) }
    : undefined;

const over: Look = ({ lots, today }) => {
  const lot = lots.find((one) => isOver(one, today));
  return (
    lot && { state: 'watch', sentence: saying('shelf-lot-over', { lot: lot.number, day: endOfLot(lot) }) }
  );
};

const setting: Look = ({ lots, usable }) => {
  const lot = lots.find((one) => one.firm_from !== null && one.firm_said_at === null);
  return usable === 0 && lot
    ? {
        state: 'going',
        sentence: saying('shelf-setting', { lot: lot.number, from: lot.firm_from, to: lot.firm_to }),
      }
    : undefined;
};

const held: Look = ({ lots, usable, onHand }) => {
  const lot = lots.find((one) => one.status !== 'released');
  if (!lot) return undefined;
  const code = usable === 0 && onHand > 0 ? 'shelf-all-held' : 'shelf-lot-held';
  const isWaiting = lot.status === 'quarantine';
  return {
    state: isWaiting ? 'going' : 'watch',
    sentence: saying(code, { lot: lot.number, status: lot.status }),
  };
};

const missing: Look = ({ group, needed }) =>
  group === 'product' && needed > 0
    ? { state: 'watch', sentence: saying('shelf-tins-missing', { n: needed }) }
    : undefined;

const low: Look = ({ usable, reorderBelow, unit }) =>
  reorderBelow !== null && usable < reorderBelow
    ? {
        state: 'watch',
        sentence: saying('shelf-low', {
          amount: amountText(usable, unit),
          below: amountText(reorderBelow, unit),
          unit,
        }),
      }
    : undefined;

const endingSoon: Look = ({ lots, today }) => {
  const soon = Temporal.PlainDate.from(today).add({ days: SOON_DAYS }).toString();
  const lot = lots.find((one) => (endOfLot(one) ?? '9999-12-31') <= soon);
  return (
    lot && { state: 'watch', sentence: saying('shelf-use-first', { lot: lot.number, day: endOfLot(lot) }) }
  );
};

const none: Look = ({ onHand, needed }) =>
  onHand === 0 && needed === 0 ? { state: 'ready', sentence: saying('shelf-none') } : undefined;

const LOOKS: readonly Look[] = [short, over, setting, held, missing, low, endingSoon, none];
