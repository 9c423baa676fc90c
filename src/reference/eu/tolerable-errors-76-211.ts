/**
 * Tolerable negative errors of prepackages, their rounding and the largest measuring error: Directive 76/211/EEC,
 * Annexes I and II, as Great Britain, Northern Ireland and the member states carry it.
 *
 * Bands are half-open: over < nominal <= upTo, so that each value has one owner. The error is continuous at every
 * band edge. Below 5 g or ml nothing holds: the content must be at least what is declared.
 */
import type { Band, ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface TolerableErrorRow extends SourcedRow {
  readonly nominalGramsOrMl: Band & { readonly notBelow?: number };
  /** One of the two is given: a share of the nominal quantity, or a fixed value. */
  readonly tolerableErrorPercent?: number;
  readonly tolerableErrorGramsOrMl?: number;
}

export interface TolerableErrorRounding extends SourcedRow {
  readonly system: string;
  readonly rule: string;
  readonly direction?: 'up';
  /** `percent-bands`: fixed values are used as they are. */
  readonly appliesTo?: 'percent-bands';
  readonly steps?: readonly { readonly nominalGramsOrMl: Band; readonly stepGramsOrMl: number }[];
}

export interface MeasuringErrorRule extends SourcedRow {
  readonly text: string;
  readonly fractionOfTolerableError: number;
  readonly examples: readonly { readonly nominalGrams: number; readonly largestMeasuringErrorGrams: number }[];
}

export const tolerableErrors: readonly TolerableErrorRow[] = [
  {
    id: 'tolerable-error-5-to-50', nominalGramsOrMl: { over: 0, upTo: 50, notBelow: 5 }, tolerableErrorPercent: 9,
    source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'], confidence: 'read',
  },
  {
    id: 'tolerable-error-over-50-to-100', nominalGramsOrMl: { over: 50, upTo: 100 }, tolerableErrorGramsOrMl: 4.5,
    source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'], confidence: 'read',
  },
  {
    id: 'tolerable-error-over-100-to-200', nominalGramsOrMl: { over: 100, upTo: 200 }, tolerableErrorPercent: 4.5,
    source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'], confidence: 'read',
  },
  {
    id: 'tolerable-error-over-200-to-300', nominalGramsOrMl: { over: 200, upTo: 300 }, tolerableErrorGramsOrMl: 9,
    source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'], confidence: 'read',
  },
  {
    id: 'tolerable-error-over-300-to-500', nominalGramsOrMl: { over: 300, upTo: 500 }, tolerableErrorPercent: 3,
    source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'], confidence: 'read',
  },
  {
    id: 'tolerable-error-over-500-to-1000', nominalGramsOrMl: { over: 500, upTo: 1000 }, tolerableErrorGramsOrMl: 15,
    source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'], confidence: 'read',
  },
  {
    id: 'tolerable-error-over-1000-to-10000', nominalGramsOrMl: { over: 1000, upTo: 10000 },
    tolerableErrorPercent: 1.5, source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'],
    confidence: 'read',
  },
  {
    id: 'tolerable-error-over-10000-to-15000', nominalGramsOrMl: { over: 10000, upTo: 15000 },
    tolerableErrorGramsOrMl: 150, source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'],
    confidence: 'read',
  },
  {
    id: 'tolerable-error-over-15000', nominalGramsOrMl: { over: 15000, upTo: null }, tolerableErrorPercent: 1,
    source: 'uk-gov', alsoSources: ['eu-76-211', 'fr-78-166', 'nz-1999', 'au-2009'], confidence: 'read',
  },
];

export const tolerableErrorRoundings: readonly TolerableErrorRounding[] = [
  {
    id: 'rounding-gb-eu', system: 'UK and EU',
    rule: 'values calculated as a percentage are rounded UP to the next 0.1 g or 0.1 ml; the fixed values are used as they are',
    direction: 'up', appliesTo: 'percent-bands',
    steps: [{ nominalGramsOrMl: { over: 0, upTo: null }, stepGramsOrMl: 0.1 }], source: 'uk-gov', confidence: 'read',
  },
  {
    id: 'rounding-r87-australia', system: 'OIML R 87 style (Australia)',
    rule: 'T rounded UP to the next 0.1 g or ml when Qn <= 1000, to the next whole g or ml when Qn > 1000',
    direction: 'up',
    steps: [
      { nominalGramsOrMl: { over: 0, upTo: 1000 }, stepGramsOrMl: 0.1 },
      { nominalGramsOrMl: { over: 1000, upTo: null }, stepGramsOrMl: 1 },
    ],
    source: 'au-2009', confidence: 'read',
  },
  {
    id: 'rounding-new-zealand', system: 'New Zealand',
    rule: 'no rounding rule in Schedule 7A Table 2 as read; table starts at more than 0 g', source: 'nz-1999',
    confidence: 'read',
  },
];

export const measuringErrorRules: readonly MeasuringErrorRule[] = [
  {
    id: 'measuring-error',
    text: 'error in measuring the actual contents must not exceed one fifth of the TNE for the nominal quantity',
    fractionOfTolerableError: 0.2,
    examples: [
      { nominalGrams: 30, largestMeasuringErrorGrams: 0.54 },
      { nominalGrams: 50, largestMeasuringErrorGrams: 0.9 },
      { nominalGrams: 100, largestMeasuringErrorGrams: 0.9 },
      { nominalGrams: 150, largestMeasuringErrorGrams: 1.36 },
      { nominalGrams: 200, largestMeasuringErrorGrams: 1.8 },
      { nominalGrams: 250, largestMeasuringErrorGrams: 1.8 },
    ],
    source: 'ni-2011-331', confidence: 'read',
  },
];

export const tolerableErrorSources: readonly ReferenceSource[] = [
  {
    id: 'uk-gov',
    title: 'Weights and measures: packaged goods (public guidance page with TNE table, rounding rule, minimum and average system)',
    where: 'gov.uk/weights-measures-and-packaging-the-law/packaged-goods', read: true,
  },
  {
    id: 'ni-2011-331',
    title: 'Weights and Measures (Packaged Goods) Regulations (Northern Ireland) 2011, Schedule 2 paragraphs 1 and 2',
    where: 'legislation.gov.uk/nisr/2011/331/schedule/2', read: true,
  },
  {
    id: 'eu-76-211', title: 'Council Directive 76/211/EEC as amended by 78/891/EEC, Annexes I and II',
    where: 'legislation.gov.uk/eudr/1976/211; eur-lex 31976L0211', read: true,
  },
  {
    id: 'fr-78-166', title: 'Decret 78-166 du 31 janvier 1978, article 4 (two versions)', where: 'legifrance.gouv.fr',
    read: true,
  },
  {
    id: 'au-2009',
    title: 'National Trade Measurement Regulations 2009 (SLI 2009 No 233), regs 4.34 (table read in a damaged copy, digits decoded) and 4.36',
    where: 'austlii.edu.au; legislation.gov.au F2009L03479', read: true,
  },
  {
    id: 'nz-1999', title: 'Weights and Measures Regulations 1999 (NZ), Schedule 7A and regulation 84B',
    where: 'legislation.govt.nz/regulation/public/1999/0373', read: true,
  },
];
