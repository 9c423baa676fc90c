import { type ExactInput, exact } from '../quantity/index.ts';
import type { Band } from './net-contents-tables.ts';

const holds = ({ over, upTo }: Band, value: ExactInput): boolean =>
  exact(value).gt(over) && (upTo === null || exact(value).lte(upTo));

/** The row whose band owns the value: over < value <= upTo. */
export const findBand = <Row>(
  rows: readonly Row[],
  bandOf: (row: Row) => Band,
  value: ExactInput,
): Row | undefined => rows.find((row) => holds(bandOf(row), value));
