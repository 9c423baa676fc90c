import type { ReactNode } from 'react';
import { sayDecimal } from '../../words/index.ts';

/** A bare number or decimal text with its thousands apart; anything else, said already, as it is. */
export const showFigure = (value: ReactNode): ReactNode =>
  typeof value === 'number' || typeof value === 'string' ? sayDecimal(value) : value;
