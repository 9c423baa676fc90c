/** Half-open: over < value <= upTo, so that each value has one owner; `upTo: null` has no end. */
export interface Band {
  readonly over: number;
  readonly upTo: number | null;
}

export interface TolerableErrorBand {
  readonly nominalGramsOrMl: Band;
  /** One of the two is given: a share of the nominal quantity, or a fixed value. */
  readonly tolerableErrorPercent?: number;
  readonly tolerableErrorGramsOrMl?: number;
}

export interface RoundingRule {
  /** Absent: fixed values are rounded too. */
  readonly appliesTo?: 'percent-bands';
  readonly steps: readonly { readonly nominalGramsOrMl: Band; readonly stepGramsOrMl: number }[];
}

/** `up-0.1`: Great Britain, Northern Ireland, European Union. `r87`: OIML R 87 as Australia carries it. */
export type Rounding = 'up-0.1' | 'r87';

export interface TolerableErrorTables {
  readonly tolerableErrors: readonly TolerableErrorBand[];
  readonly roundings: Readonly<Record<Rounding, RoundingRule>>;
  /** Closed at both ends; outside of it nothing may lie below the label. */
  readonly averageSystem: { readonly from: number; readonly upTo: number };
  readonly measuringErrorFraction: number;
}

export interface FigureHeightBand {
  readonly nominalGramsOrMl: Band;
  readonly minHeightMm: number;
}

export type SamplingScheme = 'gb-single' | 'eu-double' | 'destructive';

export type CountTestRow = { readonly batchSize: Band } & (
  | {
      readonly scheme: 'gb-single' | 'destructive';
      readonly sampleSize: number;
      readonly acceptAtMost: number;
      readonly rejectFrom: number;
    }
  | {
      readonly scheme: 'eu-double';
      readonly firstSampleSize: number;
      readonly firstAcceptAtMost: number;
      readonly firstRejectFrom: number;
      readonly totalSampleSize: number;
      /** These two hold for both samples together. */
      readonly acceptAtMost: number;
      readonly rejectFrom: number;
    }
  | { readonly scheme: 'all-weighed'; readonly maxDefectiveFraction: number }
);

/** What the tests of a batch need beside the tolerable error. */
export interface PackTestTables extends TolerableErrorTables {
  readonly countTests: readonly CountTestRow[];
  /** Packers' second rule, as a working figure: the share of packs that may lie below limit 1. */
  readonly mayLieBelowLimit1Fraction: number;
}

/** Target = nominal - tolerableErrorMultiple x tolerable error + deviationMultiple x standard deviation. */
export interface TargetRule {
  readonly decides: 'nominal' | 'limit-1' | 'limit-2';
  readonly tolerableErrorMultiple: number;
  readonly deviationMultiple: number;
}

export interface NetContentsTables extends PackTestTables {
  readonly figureHeights: readonly FigureHeightBand[];
  readonly targetRules: readonly TargetRule[];
}
