/**
 * Uncertainty of one addition on a scale: JCGM 100 (rectangular distribution of a rounded reading).
 * d is the readability; two readings (tare then gross) give d / sqrt(6).
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface WeighingUncertaintyRule extends SourcedRow {
  readonly text: string;
  readonly uncertaintyInReadability?: number;
  readonly examples?: readonly WeighingUncertaintyExample[];
}

export interface WeighingUncertaintyExample {
  readonly weightGrams: number;
  readonly readabilityGrams: number;
  readonly readings: 1 | 2;
  readonly accuracyClass?: 'I' | 'II' | 'III' | 'IIII';
  readonly verificationIntervalGrams?: number;
  readonly inService?: boolean;
  readonly inServiceGrams?: number;
  readonly standardUncertaintyGrams: number;
  readonly relativeStandardUncertainty: number;
  readonly relativeExpanded: number;
  readonly worstCaseRelative?: number;
  readonly minimumLoadGrams?: number;
  readonly belowMinimumLoad?: boolean;
}

export const weighingUncertaintyRules: readonly WeighingUncertaintyRule[] = [
  { id: 'rectangular', text: 'rectangular half-width a: u = a/sqrt(3)', source: 'gum', confidence: 'memory' },
  {
    id: 'one-reading', text: 'one reading with step d: a = d/2, u = d/(2 sqrt 3) = 0.2887 d',
    uncertaintyInReadability: 0.2887, source: 'gum', confidence: 'memory',
  },
  {
    id: 'two-readings',
    text: 'difference of two readings (tare then gross, or zero then load): u = d/sqrt(6) = 0.4082 d, which is where 0.41 d comes from',
    uncertaintyInReadability: 0.4082, source: 'calc', confidence: 'computed',
  },
  {
    id: 'small-addition',
    text: 'relative standard uncertainty of a small addition m: u_rel = sqrt(u_rounding^2 + s_repeat^2 + (mpe_service/sqrt 3)^2)/m; expanded with k = 2',
    source: 'calc', confidence: 'computed',
  },
  {
    id: 'small-addition-example',
    text: '1.3 g added on a 0.1 g step scale, rounding only, two readings: u = 0.0408 g = 3.14 %, U(k=2) = 6.28 %; worst case +-0.1 g = 7.69 %; with class III in-service mpe 1 e (e = 0.1 g): u = 0.0707 g = 5.44 %, U = 10.88 %; the class III minimum capacity 20 e = 2 g is above 1.3 g',
    examples: [
      {
        weightGrams: 1.3, readabilityGrams: 0.1, readings: 2, standardUncertaintyGrams: 0.040825,
        relativeStandardUncertainty: 0.031404, relativeExpanded: 0.062807, worstCaseRelative: 0.076923,
      },
      {
        weightGrams: 1.3, readabilityGrams: 0.1, readings: 2, accuracyClass: 'III', verificationIntervalGrams: 0.1,
        inService: true, inServiceGrams: 0.1, standardUncertaintyGrams: 0.070711,
        relativeStandardUncertainty: 0.054393, relativeExpanded: 0.108786, minimumLoadGrams: 2,
        belowMinimumLoad: true,
      },
    ],
    source: 'calc', confidence: 'computed',
  },
];

export const weighingUncertaintySources: readonly ReferenceSource[] = [
  { id: 'gum', title: 'JCGM 100: rectangular distribution', where: 'bipm.org', read: false },
  { id: 'calc', title: 'Own computation', where: 'own computation', read: true },
];
