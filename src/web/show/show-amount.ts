import { briefGrams, sayDecimal, sayGrams } from '../../words/index.ts';

/** An amount with its unit as a person reads it: `1 840 g`, or just the count for pieces. */
export const showAmount = (value: string, unit: 'g' | 'pieces'): string =>
  unit === 'g' ? sayGrams(briefGrams(value)) : sayDecimal(value);
