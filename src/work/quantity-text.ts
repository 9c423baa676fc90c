import { gramsFromMicrograms, toText } from '../core/quantity/index.ts';

/** Micrograms never leave the server: grams as decimal text without trailing noughts. */
export const gramsText = (micrograms: number): string => toText(gramsFromMicrograms(micrograms));

/** A lot's quantity in its own unit. */
export const amountText = (quantity: number, unit: string): string =>
  unit === 'g' ? gramsText(quantity) : String(quantity);
