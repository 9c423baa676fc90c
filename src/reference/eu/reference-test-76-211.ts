/**
 * The reference test of a batch of prepackages: Directive 76/211/EEC Annex II with the single plan of Great Britain
 * (SI 2006/659, Schedule 2). A batch passes only if both the count test and the mean test pass.
 *
 * batchSize is half-open: over < size <= upTo.
 */
import type { Band, ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface ReferenceTestBatchRule extends SourcedRow {
  readonly text: string;
  readonly largestBatchSize?: number;
}

export interface SingleCountTest extends SourcedRow {
  readonly scheme: 'gb-single' | 'destructive';
  readonly batchSize: Band;
  readonly sampleSize: number;
  readonly acceptAtMost: number;
  readonly rejectFrom: number;
  readonly note?: string;
}

/** The counts of `acceptAtMost` and `rejectFrom` hold for both samples together. */
export interface DoubleCountTest extends SourcedRow {
  readonly scheme: 'eu-double';
  readonly batchSize: Band;
  readonly firstSampleSize: number;
  readonly firstAcceptAtMost: number;
  readonly firstRejectFrom: number;
  readonly secondSampleSize: number;
  readonly totalSampleSize: number;
  readonly acceptAtMost: number;
  readonly rejectFrom: number;
}

/** Below 100 packs every pack is weighed. */
export interface AllWeighedTest extends SourcedRow {
  readonly scheme: 'all-weighed';
  readonly batchSize: Band;
  readonly maxDefectiveFraction: number;
  readonly text: string;
}

export type CountTest = SingleCountTest | DoubleCountTest | AllWeighedTest;

export interface MeanTest extends SourcedRow {
  readonly scheme: 'non-destructive' | 'destructive' | 'all-weighed';
  readonly batchSize: Band;
  /** Absent: all packs of the batch. */
  readonly sampleSize?: number;
  /** mean >= nominal - factor x standard deviation (divisor n - 1). */
  readonly deviationFactor: number;
  readonly text: string;
}

export interface MeanTestFormula extends SourcedRow {
  readonly text: string;
  readonly quantile: number;
  readonly check: readonly { readonly sampleSize: number; readonly deviationFactor: number }[];
}

export const referenceTestBatchRules: readonly ReferenceTestBatchRule[] = [
  {
    id: 'batch-definition',
    text: 'batch = packages of same nominal quantity, same type, same run, same place; end of line: one hour of maximum output; elsewhere at most 10000',
    largestBatchSize: 10000, source: 'uk-2006-659', alsoSources: ['eu-76-211'], confidence: 'read',
  },
  {
    id: 'batch-under-100', text: 'batches under 100: non-destructive test is 100 %', source: 'uk-2006-659',
    alsoSources: ['eu-76-211'], confidence: 'read',
  },
  {
    id: 'destructive-only-if',
    text: 'destructive test only where non-destructive is impracticable and as a rule not for batches under 100',
    source: 'uk-2006-659', alsoSources: ['eu-76-211'], confidence: 'read',
  },
  {
    id: 'defective-definition', text: 'defective = actual contents < Qn - TNE', source: 'uk-2006-659',
    confidence: 'read',
  },
  {
    id: 'both-tests', text: 'batch passes only if both the count test and the mean test pass', source: 'eu-76-211',
    alsoSources: ['uk-2006-659'], confidence: 'read',
  },
];

export const countTests: readonly CountTest[] = [
  {
    id: 'gb-single-100-to-500', scheme: 'gb-single', batchSize: { over: 99, upTo: 500 }, sampleSize: 50,
    acceptAtMost: 3, rejectFrom: 4, note: 'UK only; the Directive has double and destructive plans',
    source: 'uk-2006-659', confidence: 'read',
  },
  {
    id: 'gb-single-501-to-3200', scheme: 'gb-single', batchSize: { over: 500, upTo: 3200 }, sampleSize: 80,
    acceptAtMost: 5, rejectFrom: 6, source: 'uk-2006-659', confidence: 'read',
  },
  {
    id: 'gb-single-3201-and-more', scheme: 'gb-single', batchSize: { over: 3200, upTo: null }, sampleSize: 125,
    acceptAtMost: 7, rejectFrom: 8, source: 'uk-2006-659', confidence: 'read',
  },
  {
    id: 'eu-double-100-to-500', scheme: 'eu-double', batchSize: { over: 99, upTo: 500 }, firstSampleSize: 30,
    firstAcceptAtMost: 1, firstRejectFrom: 3, secondSampleSize: 30, totalSampleSize: 60, acceptAtMost: 4,
    rejectFrom: 5, source: 'eu-76-211', alsoSources: ['fr-arr-1978'], confidence: 'read',
  },
  {
    id: 'eu-double-501-to-3200', scheme: 'eu-double', batchSize: { over: 500, upTo: 3200 }, firstSampleSize: 50,
    firstAcceptAtMost: 2, firstRejectFrom: 5, secondSampleSize: 50, totalSampleSize: 100, acceptAtMost: 6,
    rejectFrom: 7, source: 'eu-76-211', alsoSources: ['fr-arr-1978'], confidence: 'read',
  },
  {
    id: 'eu-double-3201-and-more', scheme: 'eu-double', batchSize: { over: 3200, upTo: null }, firstSampleSize: 80,
    firstAcceptAtMost: 3, firstRejectFrom: 7, secondSampleSize: 80, totalSampleSize: 160, acceptAtMost: 8,
    rejectFrom: 9, source: 'eu-76-211', alsoSources: ['fr-arr-1978'], confidence: 'read',
  },
  {
    id: 'destructive-100-and-more', scheme: 'destructive', batchSize: { over: 99, upTo: null }, sampleSize: 20,
    acceptAtMost: 1, rejectFrom: 2, source: 'eu-76-211', alsoSources: ['fr-arr-1978'], confidence: 'read',
  },
  {
    id: 'all-weighed-1-to-99', scheme: 'all-weighed', batchSize: { over: 0, upTo: 99 }, maxDefectiveFraction: 0.05,
    text: 'accept if defective packages do not exceed 5 % of the batch', source: 'uk-2006-659', confidence: 'read',
  },
];

export const meanTests: readonly MeanTest[] = [
  {
    id: 'mean-non-destructive-100-to-500', scheme: 'non-destructive', batchSize: { over: 99, upTo: 500 },
    sampleSize: 30, deviationFactor: 0.503, text: 'mean >= Qn - 0.503 s', source: 'uk-2006-659',
    alsoSources: ['fr-arr-1978', 'eu-76-211'], confidence: 'read',
  },
  {
    id: 'mean-non-destructive-501-and-more', scheme: 'non-destructive', batchSize: { over: 500, upTo: null },
    sampleSize: 50, deviationFactor: 0.379, text: 'mean >= Qn - 0.379 s', source: 'uk-2006-659',
    alsoSources: ['fr-arr-1978'], confidence: 'read',
  },
  {
    id: 'mean-destructive-100-and-more', scheme: 'destructive', batchSize: { over: 99, upTo: null }, sampleSize: 20,
    deviationFactor: 0.64, text: 'mean >= Qn - 0.640 s', source: 'uk-2006-659', alsoSources: ['fr-arr-1978'],
    confidence: 'read',
  },
  {
    id: 'mean-all-weighed-1-to-99', scheme: 'all-weighed', batchSize: { over: 0, upTo: 99 }, deviationFactor: 0,
    text: 'mean >= Qn, no statistical allowance', source: 'uk-2006-659', confidence: 'read',
  },
];

export const meanTestFormulas: readonly MeanTestFormula[] = [
  {
    id: 'mean-test-formula',
    text: 'mean > Qn - t(0.995, n-1) * s / sqrt(n); s with divisor n-1; t is the one-sided 99.5 % Student quantile',
    quantile: 0.995,
    check: [
      { sampleSize: 20, deviationFactor: 0.6397 },
      { sampleSize: 30, deviationFactor: 0.5032 },
      { sampleSize: 50, deviationFactor: 0.379 },
    ],
    source: 'uk-2006-659', confidence: 'read',
  },
];

export const referenceTestSources: readonly ReferenceSource[] = [
  {
    id: 'uk-2006-659',
    title: 'Weights and Measures (Packaged Goods) Regulations 2006 (SI 2006/659), Schedule 2 paragraphs 2 to 4, regulation 3',
    where: 'legislation.gov.uk/uksi/2006/659', read: true,
  },
  {
    id: 'eu-76-211', title: 'Council Directive 76/211/EEC as amended by 78/891/EEC, Annexes I and II',
    where: 'legislation.gov.uk/eudr/1976/211; eur-lex 31976L0211', read: true,
  },
  {
    id: 'fr-arr-1978', title: 'Arrete du 20 octobre 1978 (preemballages), articles 1, 2, 8, 10, 11',
    where: 'legifrance.gouv.fr', read: true,
  },
];
