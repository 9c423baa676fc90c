export type { LinearRow } from './dictionary.ts';
export { Fraction, fractionOf, NOUGHT, UNIT } from './fraction.ts';
export { type LinearAnswer, type LinearProgram, maximise } from './maximise.ts';
export {
  isWithin,
  overlapOf,
  type StraightLine,
  type Stretch,
  type StretchEnd,
  stretchAbove,
} from './stretch.ts';
