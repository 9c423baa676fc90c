/**
 * Non-automatic scales: accuracy classes, smallest load and permissible errors, OIML R 76-1 tables 1, 3 and 6.
 *
 * e is the verification interval; InE = counted in e. Bands of load are half-open (over < load <= upTo; includesZero:
 * the first band holds zero too); bands of the verification interval are closed at both ends.
 */
import type { Band, ReferenceSource, SourcedRow } from '../sourced-row.ts';

export type AccuracyClass = 'I' | 'II' | 'III' | 'IIII';

export interface AccuracyClassRow extends SourcedRow {
  readonly accuracyClass: AccuracyClass;
  readonly verificationIntervalGrams: { readonly from: number; readonly upTo: number | null };
  readonly minIntervals: number;
  readonly maxIntervals?: number;
  readonly minimumLoadInE: number;
}

export interface InitialErrorRow extends SourcedRow {
  readonly accuracyClass: AccuracyClass;
  readonly loadInE: Band;
  readonly includesZero: boolean;
  readonly permissibleErrorInE: number;
}

export interface InServiceErrorRule extends SourcedRow {
  /** Times the initial error. */
  readonly factor?: number;
  readonly text: string;
}

export const accuracyClasses: readonly AccuracyClassRow[] = [
  {
    id: 'class-i-from-0-001', accuracyClass: 'I', verificationIntervalGrams: { from: 0.001, upTo: null },
    minIntervals: 50000, minimumLoadInE: 100, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-ii-from-0-001', accuracyClass: 'II', verificationIntervalGrams: { from: 0.001, upTo: 0.05 },
    minIntervals: 100, maxIntervals: 100_000, minimumLoadInE: 20, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-ii-from-0-1', accuracyClass: 'II', verificationIntervalGrams: { from: 0.1, upTo: null },
    minIntervals: 5000, maxIntervals: 100_000, minimumLoadInE: 50, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iii-from-0-1', accuracyClass: 'III', verificationIntervalGrams: { from: 0.1, upTo: 2 },
    minIntervals: 100, maxIntervals: 10000, minimumLoadInE: 20, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iii-from-5', accuracyClass: 'III', verificationIntervalGrams: { from: 5, upTo: null },
    minIntervals: 500, maxIntervals: 10000, minimumLoadInE: 20, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iiii-from-5', accuracyClass: 'IIII', verificationIntervalGrams: { from: 5, upTo: null },
    minIntervals: 100, maxIntervals: 1000, minimumLoadInE: 10, source: 'r76-tab', confidence: 'read',
  },
];

export const initialErrors: readonly InitialErrorRow[] = [
  {
    id: 'class-i-over-0', accuracyClass: 'I', loadInE: { over: 0, upTo: 50000 }, includesZero: true,
    permissibleErrorInE: 0.5, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-i-over-50000', accuracyClass: 'I', loadInE: { over: 50000, upTo: 200_000 }, includesZero: false,
    permissibleErrorInE: 1, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-i-over-200000', accuracyClass: 'I', loadInE: { over: 200_000, upTo: null }, includesZero: false,
    permissibleErrorInE: 1.5, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-ii-over-0', accuracyClass: 'II', loadInE: { over: 0, upTo: 5000 }, includesZero: true,
    permissibleErrorInE: 0.5, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-ii-over-5000', accuracyClass: 'II', loadInE: { over: 5000, upTo: 20000 }, includesZero: false,
    permissibleErrorInE: 1, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-ii-over-20000', accuracyClass: 'II', loadInE: { over: 20000, upTo: 100_000 }, includesZero: false,
    permissibleErrorInE: 1.5, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iii-over-0', accuracyClass: 'III', loadInE: { over: 0, upTo: 500 }, includesZero: true,
    permissibleErrorInE: 0.5, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iii-over-500', accuracyClass: 'III', loadInE: { over: 500, upTo: 2000 }, includesZero: false,
    permissibleErrorInE: 1, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iii-over-2000', accuracyClass: 'III', loadInE: { over: 2000, upTo: 10000 }, includesZero: false,
    permissibleErrorInE: 1.5, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iiii-over-0', accuracyClass: 'IIII', loadInE: { over: 0, upTo: 50 }, includesZero: true,
    permissibleErrorInE: 0.5, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iiii-over-50', accuracyClass: 'IIII', loadInE: { over: 50, upTo: 200 }, includesZero: false,
    permissibleErrorInE: 1, source: 'r76-tab', confidence: 'read',
  },
  {
    id: 'class-iiii-over-200', accuracyClass: 'IIII', loadInE: { over: 200, upTo: 1000 }, includesZero: false,
    permissibleErrorInE: 1.5, source: 'r76-tab', confidence: 'read',
  },
];

export const inServiceErrorRules: readonly InServiceErrorRule[] = [
  {
    id: 'in-service-factor', factor: 2,
    text: 'errors in service are twice the initial ones; they apply to net values for all loads except preset tare; digital indications are corrected for rounding before comparing',
    source: 'uk-nawi-1995', confidence: 'read',
  },
  {
    id: 'misprint-warning',
    text: 'the UK 1995 table as read prints 20 000 e instead of 5 000 e for the first class II band: a misprint, use r76-tab',
    source: 'uk-nawi-1995', confidence: 'read',
  },
];

export const scaleSources: readonly ReferenceSource[] = [
  {
    id: 'r76-tab', title: 'OIML R 76-1 tables 1, 3 and 6 (classes, minimum capacity, maximum permissible errors)',
    where: 'table sheet quoting R 76-1 and R 111-1, document-sharing copy', read: true,
  },
  {
    id: 'uk-nawi-1995',
    title: 'Non-automatic Weighing Instruments (EEC Requirements) Regulations 1995, Schedule 2 paragraph 4',
    where: 'legislation.gov.uk/uksi/1995/1907', read: true,
  },
];
