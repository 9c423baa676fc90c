export type AccuracyClass = 'I' | 'II' | 'III' | 'IIII';

export interface ScaleTables {
  readonly accuracyClasses: readonly {
    readonly accuracyClass: AccuracyClass;
    /** Closed at both ends. */
    readonly verificationIntervalGrams: { readonly from: number; readonly upTo: number | null };
    readonly minimumLoadInE: number;
    /** Absent: no largest number of intervals. */
    readonly maxIntervals?: number;
  }[];
  readonly initialErrors: readonly {
    readonly accuracyClass: AccuracyClass;
    /** Half-open: over < load <= upTo, in verification intervals; includesZero: load 0 too. */
    readonly loadInE: { readonly over: number; readonly upTo: number | null };
    readonly includesZero: boolean;
    readonly permissibleErrorInE: number;
  }[];
  /** Errors in service, as a multiple of the initial ones. */
  readonly inServiceFactor: number;
}
