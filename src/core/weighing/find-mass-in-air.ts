import { type Exact, type ExactInput, exact, ONE } from '../quantity/index.ts';

export interface WeighedInAir {
  readonly indicationGrams: ExactInput;
  readonly sampleDensityGramsPerMl: ExactInput;
  readonly airDensityGramsPerMl: ExactInput;
  /** Of the weights that the scale was adjusted with. */
  readonly calibrationDensityGramsPerMl: ExactInput;
}

/**
 * Mass of what a scale shows, air buoyancy allowed for, in grams.
 *
 * Equation: m = W (1 - a / c) / (1 - a / d), with W the indication, a, c and d the densities of air, weights and sample.
 * Valid range: densities above the air's. Net content on a label is the weighed value: this is for turning mass into volume.
 * Source: balance operating instructions, air buoyancy (read; weighing table `buoyancy-formula`).
 */
export function findMassInAir(weighed: WeighedInAir): Exact {
  const air = exact(weighed.airDensityGramsPerMl);
  const onWeights = ONE.minus(air.div(weighed.calibrationDensityGramsPerMl));
  return exact(weighed.indicationGrams)
    .times(onWeights)
    .div(ONE.minus(air.div(weighed.sampleDensityGramsPerMl)));
}
