import { type Problem, problem } from '../core/problem.ts';
import type { LotAtHand } from '../storage/index.ts';
import { amountText } from './quantity-text.ts';

/**
 * Why a lot may not go into anything on this day; nothing where it may. Released only, not past its date, and a base
 * only once a person said that it is firm; past its keep-until date it has to be looked at (said to be firm) again.
 * A date still counts on its own day. What was made as a trial goes into trials only.
 */
export function whyNotUsable(lot: LotAtHand, today: string, purpose = 'sale'): Problem | undefined {
  const parameters = { item: lot.item_name };
  if (lot.made_as === 'trial' && purpose !== 'trial') {
    return problem('lot-of-a-trial', lot.number, { parameters });
  }
  if (lot.formula_kind === 'base' && lot.firm_from !== null && lot.firm_said_at === null) {
    return problem('lot-not-firm', lot.number, { found: lot.firm_from, parameters });
  }
  if (lot.status !== 'released') {
    return problem('lot-not-released-for-use', lot.number, {
      found: lot.status,
      allowed: 'released',
      parameters: { ...parameters, reason: lot.status_reason || 'none' },
    });
  }
  if (lot.best_before !== null && lot.best_before < today) {
    return problem('lot-expired', lot.number, { found: lot.best_before, allowed: today, parameters });
  }
  if (isPastKeeping(lot, today)) {
    return problem('lot-past-keeping', lot.number, { found: lot.keep_until, allowed: today, parameters });
  }
  return undefined;
}

export const isPastKeeping = (lot: LotAtHand, today: string): boolean =>
  lot.keep_until !== null &&
  lot.keep_until < today &&
  (lot.firm_said_on === null || lot.firm_said_on <= lot.keep_until);

export const isUsable = (lot: LotAtHand, today: string, purpose = 'sale'): boolean =>
  whyNotUsable(lot, today, purpose) === undefined;

/** More than the lot has: says what it has and what was asked; the way out is to weigh the tub or count the pieces. */
export const lotTooSmall = (lot: LotAtHand, asked: number): Problem =>
  problem('lot-too-small', lot.number, {
    found: amountText(asked, lot.unit),
    allowed: amountText(lot.on_hand, lot.unit),
    parameters: { item: lot.item_name, unit: lot.unit },
  });

export interface Taking {
  readonly place_id: string;
  readonly quantity: number;
}

/** Where a quantity is taken from: shelves first. The caller has seen that there is enough. */
export function spreadOverPlaces(lot: LotAtHand, quantity: number): Taking[] {
  let missing = quantity;
  const takings: Taking[] = [];
  for (const place of lot.places) {
    const taken = Math.min(missing, place.quantity);
    if (taken <= 0) continue;
    takings.push({ place_id: place.place_id, quantity: taken });
    missing -= taken;
  }
  if (missing > 0) throw new Error(`asked more of lot ${lot.number} than it has`);
  return takings;
}
