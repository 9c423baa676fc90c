export { Fraction, fractionOf, NOUGHT, UNIT } from './fraction.ts';
export { type LinearAnswer, type LinearProgram, type LinearRow, maximise } from './maximise.ts';
export {
  isWithin,
  overlapOf,
  type StraightLine,
  type Stretch,
  type StretchEnd,
  stretchAbove,
} from './stretch.ts';
