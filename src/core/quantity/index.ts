export {
  type Exact,
  type ExactInput,
  exact,
  HUNDRED,
  largest,
  ONE,
  roundToStep,
  smallest,
  sumOf,
  toText,
  ZERO,
} from './exact.ts';
export {
  GRAMS_PER_OUNCE,
  gramsFromMicrograms,
  MICROGRAMS_PER_GRAM,
  type Micrograms,
  microgramsFromGrams,
  type Pieces,
} from './mass.ts';
export { Quotient } from './quotient.ts';
export { readDecimal } from './read-decimal.ts';
export { percentPlaces, roundPercent } from './round-percent.ts';
