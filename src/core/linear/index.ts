export { Fraction, fractionOf, NOUGHT, UNIT } from './fraction.ts';
export { type LinearAnswer, type LinearProgram, type LinearRow, maximise } from './maximise.ts';
