/**
 * Weighing against published examples: a combined uncertainty and a buoyancy correction.
 *
 * EURACHEM/CITAC QUAM example A1 (components from memory, result read): a flask with 0.1 ml triangular, 0.02 ml
 * repeatability and 0.084 ml rectangular has u = 0.0664730521840743 ml; tolerance 1e-9. A difference of two readings
 * that are each rounded to 0.1 is triangular with that half-width, so that an addition on a scale of this step has it.
 * Buoyancy: aluminium, balance operating instructions (read; air of 1.2 kg/m3 implied), tolerance 0.0006 mg; glass, the
 * same maker's supplement (read), tolerance 0.000006 g; table of corrections computed outside of this program.
 */
import { describe, expect, it } from 'vitest';
import { massInAirCalculation } from '../../src/catalogue/mass-in-air.ts';
import { premixCalculation } from '../../src/catalogue/premix.ts';
import { smallestWeightCalculation } from '../../src/catalogue/smallest-weight.ts';
import { must } from '../../src/core/problem.ts';
import { findAdditionError, type ScaleTables } from '../../src/core/weighing/index.ts';

/** A class whose error in service is the flask's rectangular part, whatever the load. */
const flask: ScaleTables = {
  accuracyClasses: [
    { accuracyClass: 'III', verificationIntervalGrams: { from: 0, upTo: null }, minimumLoadInE: 0 },
  ],
  initialErrors: [
    {
      accuracyClass: 'III',
      loadInE: { over: 0, upTo: null },
      includesZero: true,
      permissibleErrorInE: 0.042,
    },
  ],
  inServiceFactor: 2,
};

it('combines triangular, repeatability and rectangular parts as example A1 does', () => {
  const error = must(
    findAdditionError(
      {
        weightGrams: 100,
        readabilityGrams: '0.1',
        readings: 2,
        repeatabilityGrams: '0.02',
        classed: { accuracyClass: 'III', verificationIntervalGrams: 1 },
        inService: true,
      },
      flask,
    ),
  );
  expect(Math.abs(error.standardUncertaintyGrams.toNumber() - 0.0664730521840743)).toBeLessThan(1e-9);
});

describe('buoyancy', () => {
  it('of aluminium: 2000.000 mg shown are 2000.589 mg', () => {
    const { massGrams } = must(
      massInAirCalculation.run({
        indicationGrams: 2,
        sampleDensityGramsPerMl: 2.7,
        airDensityGramsPerMl: 0.0012,
      }),
    );
    expect(Math.abs(massGrams * 1000 - 2000.589)).toBeLessThan(0.0006);
  });

  it('of glass: 90.00000 g shown are 90.02788 g in air of 1.126 kg/m3', () => {
    const { massGrams } = must(
      massInAirCalculation.run({
        indicationGrams: 90,
        sampleDensityGramsPerMl: 2.5,
        airDensityGramsPerMl: 0.001126,
      }),
    );
    expect(Math.abs(massGrams - 90.02788)).toBeLessThan(0.000006);
  });

  it.each([
    [0.4, 0.2859],
    [0.55, 0.2036],
    [0.7, 0.1567],
    [0.92, 0.1156],
    [1, 0.1051],
    [1.2, 0.0851],
    [2.16, 0.0406],
  ])('of a sample of %f g/ml is %f %%', (sampleDensityGramsPerMl, printed) => {
    const { correctionPercent } = must(
      massInAirCalculation.run({ indicationGrams: 100, sampleDensityGramsPerMl }),
    );
    expect(Math.abs(correctionPercent - printed)).toBeLessThan(0.00006);
  });
});

it('a premix of what the pharmacy pages call least weighable: 120 mg at 6 mg and 5 %, for a dose of 10 mg', () => {
  const { smallestWeightGrams } = must(
    smallestWeightCalculation.run({
      readabilityGrams: 1e-6,
      repeatabilityGrams: 0.003,
      relativeTolerance: 0.05,
    }),
  );
  // Aliquot method: 120 mg of the substance and 1320 mg of the diluent make 1440 mg, of which 120 mg hold 10 mg.
  expect(
    must(premixCalculation.run({ doseGrams: 0.01, smallestWeighableGrams: smallestWeightGrams })),
  ).toEqual({
    factor: 12,
    premixTotalGrams: 1.44,
    carrierGrams: 1.32,
    portionGrams: 0.12,
  });
});
