import { readDecimal, toText } from '../../core/quantity/index.ts';

/**
 * A typed number as the contract wants it: no spaces between thousands. What cannot be read goes on as typed, and the
 * workshop says what is wrong with it.
 */
export function typedDecimal(typed: string): string {
  const read = readDecimal(typed, 'value');
  return read.ok ? toText(read.value) : typed;
}

/** The same for fields that may stay empty: null means that nobody has said. */
export const typedDecimalOrNull = (typed: string): string | null =>
  typed.trim() === '' ? null : typedDecimal(typed);
