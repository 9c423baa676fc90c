import { describe, expect, it } from 'vitest';
import { exposure } from '../../src/catalogue/exposure.ts';
import { must } from '../../src/core/problem.ts';
import { findExposureMgPerKgDay, judgeMarginOfSafety } from '../../src/core/safety/index.ts';

/** Dose of a product by percent absorbed, figures as printed. */
describe('exposure to ingredients of a body lotion (Raposo et al. 2013, BioMed Research International 181634, Table 6)', () => {
  // Printed to two decimals: tolerance 0.005 mg/kg a day. 123.20 mg/kg a day, absorption 100 %.
  it.each([
    ['isopropyl myristate', 5, 6.16],
    ['PEG-20 glyceryl laurate', 4, 4.93],
    ['PVM/MA copolymer', 0.3, 0.37],
  ])('%s at %d %% gives %d mg/kg a day', (_name, percent, printed) => {
    const answer = must(exposure.run({ productType: 'body-lotion', percent, absorptionPercent: 100 }));
    expect(Math.abs(answer.exposureMgPerKgDay - printed)).toBeLessThanOrEqual(0.005);
    expect(answer).not.toHaveProperty('marginOfSafety');
  });
});

interface Margin {
  readonly title: string;
  readonly pointOfDeparture: number;
  readonly exposure: number;
  readonly printed: number;
  readonly tolerance: number;
  readonly isSafe: boolean;
}

/** Tolerance beside each; "derived" where the source prints the dose and the margin is its quotient. */
const MARGINS: readonly Margin[] = [
  {
    title: 'triclosan, single product (Toxicol Res 2019;35:137, abstract)',
    pointOfDeparture: 12,
    exposure: 0.04733,
    printed: 253.5,
    tolerance: 0.1,
    isSafe: true,
  },
  {
    title: 'drometrizole 1 % (Toxicol Res 2019;35:119, abstract; margin derived)',
    pointOfDeparture: 31.75,
    exposure: 0.27228,
    printed: 116.6,
    tolerance: 0.1,
    isSafe: true,
  },
  {
    title: 'drometrizole 7 % (the same; margin derived)',
    pointOfDeparture: 31.75,
    exposure: 1.90598,
    printed: 16.66,
    tolerance: 0.01,
    isSafe: false,
  },
  {
    // The paper prints 4200, rounded.
    title: 'kojic acid, leave-on care (Nohynek et al. 2004, Food Chem Toxicol, abstract)',
    pointOfDeparture: 250,
    exposure: 0.06,
    printed: 4167,
    tolerance: 1,
    isSafe: true,
  },
  {
    title: 'hydroquinone (journal abstract: dose 0.017, margin 559; point of departure calculated back)',
    pointOfDeparture: 9.5,
    exposure: 0.017,
    printed: 559,
    tolerance: 1,
    isSafe: true,
  },
  {
    title: 'l-linalool, all products (RIFM assessment, abstract; exposure calculated back)',
    pointOfDeparture: 36,
    exposure: 0.016,
    printed: 2250,
    tolerance: 1,
    isSafe: true,
  },
  {
    title: 'alpha-methylbenzyl acetate, all products (RIFM assessment, abstract; exposure calculated back)',
    pointOfDeparture: 100,
    exposure: 0.028,
    printed: 3571,
    tolerance: 1,
    isSafe: true,
  },
  {
    title: '2-methyl-3-buten-2-ol, all products (RIFM assessment, abstract; exposure calculated back)',
    pointOfDeparture: 50,
    exposure: 0.000011,
    printed: 4_545_455,
    tolerance: 1,
    isSafe: true,
  },
  {
    title: 'CMIT/MIT 0.0015 % (Toxicol Res 2019, abstract; margin derived)',
    pointOfDeparture: 2.8,
    exposure: 0.00423,
    printed: 661.9,
    tolerance: 0.1,
    isSafe: true,
  },
];

describe.each(MARGINS)('margin of safety: $title', (row) => {
  it('comes out as printed, with the conclusion', () => {
    const { marginOfSafety, isEnough } = judgeMarginOfSafety({
      exposureMgPerKgDay: row.exposure,
      pointOfDepartureMgPerKgDay: row.pointOfDeparture,
      bioavailabilityPercent: 100,
      minimum: 100,
    });
    const found = marginOfSafety?.toNumber() ?? Number.NaN;
    expect(Math.abs(found - row.printed)).toBeLessThanOrEqual(row.tolerance);
    expect(isEnough).toBe(row.isSafe);
  });
});

it('grows in proportion to the content: drometrizole 1 % and 7 % (Toxicol Res 2019;35:119; tolerance 0.0001)', () => {
  const at = (percent: number) =>
    findExposureMgPerKgDay({
      relativeExposureMgPerKgDay: 27.228,
      percent,
      absorptionPercent: 100,
    }).toNumber();
  expect(at(1)).toBeCloseTo(0.27228, 10);
  expect(Math.abs(at(7) - 1.90598)).toBeLessThanOrEqual(0.0001);
});

describe('the table of product types (SCCS Notes of Guidance, 12th revision, Table 3A)', () => {
  // Exposure = amount x retention factor, printed to two decimals: tolerance 0.006 mg/kg a day.
  it.each([
    ['mouthwash', 325.4 * 0.1],
    ['toothpaste-adult', 43.29 * 0.05],
    ['hair-styling', 57.4 * 0.1],
  ])('%s: the whole product counts with amount x retention, %d', (productType, expected) => {
    const answer = must(exposure.run({ productType, percent: 100, absorptionPercent: 100 }));
    expect(Math.abs(answer.exposureMgPerKgDay - expected)).toBeLessThanOrEqual(0.006);
  });
});

interface Opinion {
  readonly title: string;
  readonly input: Readonly<Record<string, number | string>>;
  readonly exposure: number;
  readonly margin: number;
  /** Relative. */
  readonly tolerance: number;
}

/** Conclusions were read; the inputs are from memory, and the arithmetic agrees with the conclusion. */
const OPINIONS: readonly Opinion[] = [
  {
    title: 'benzophenone-3 6 % in a face cream, 1.54 g over 60 kg (SCCS/1625/20)',
    input: {
      relativeExposureMgPerKgDay: 25.666666666666668,
      percent: 6,
      absorptionPercent: 9.9,
      pointOfDepartureMgPerKgDay: 67.9,
    },
    exposure: 0.1525,
    margin: 445.4,
    tolerance: 0.002,
  },
  {
    title: 'homosalate 0.5 %, whole body 18 g over 60 kg (SCCS/1622/20)',
    input: {
      relativeExposureMgPerKgDay: 300,
      percent: 0.5,
      absorptionPercent: 5.3,
      pointOfDepartureMgPerKgDay: 10,
    },
    exposure: 0.0795,
    margin: 125.8,
    tolerance: 0.001,
  },
  {
    title: 'salicylic acid 0.5 % in a body lotion (SCCS/1601/18)',
    input: {
      productType: 'body-lotion',
      percent: 0.5,
      absorptionPercent: 20,
      pointOfDepartureMgPerKgDay: 75,
    },
    exposure: 0.1232,
    margin: 608.8,
    tolerance: 0.001,
  },
];

it.each(OPINIONS)('$title', ({ input, ...printed }) => {
  const answer = must(exposure.run(input));
  expect(Math.abs(answer.exposureMgPerKgDay / printed.exposure - 1)).toBeLessThanOrEqual(printed.tolerance);
  expect(Math.abs((answer.marginOfSafety ?? 0) / printed.margin - 1)).toBeLessThanOrEqual(printed.tolerance);
  expect(answer.verdict).toBe('at-least-100');
});
