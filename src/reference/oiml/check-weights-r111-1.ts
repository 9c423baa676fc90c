/** Permissible errors of check weights of the classes M1, M2 and M3: OIML R 111-1. */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface CheckWeightRow extends SourcedRow {
  readonly nominalGrams: number;
  readonly m1ErrorMilligrams: number;
  readonly m2ErrorMilligrams: number;
  readonly m3ErrorMilligrams?: number;
}

export const checkWeights: readonly CheckWeightRow[] = [
  {
    id: 'check-weight-50000-g', nominalGrams: 50000, m1ErrorMilligrams: 2500, m2ErrorMilligrams: 8000,
    m3ErrorMilligrams: 25000, source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-20000-g', nominalGrams: 20000, m1ErrorMilligrams: 1000, m2ErrorMilligrams: 3000,
    m3ErrorMilligrams: 10000, source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-10000-g', nominalGrams: 10000, m1ErrorMilligrams: 500, m2ErrorMilligrams: 1600,
    m3ErrorMilligrams: 5000, source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-5000-g', nominalGrams: 5000, m1ErrorMilligrams: 250, m2ErrorMilligrams: 800,
    m3ErrorMilligrams: 2500, source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-2000-g', nominalGrams: 2000, m1ErrorMilligrams: 100, m2ErrorMilligrams: 300,
    m3ErrorMilligrams: 1000, source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-1000-g', nominalGrams: 1000, m1ErrorMilligrams: 50, m2ErrorMilligrams: 160,
    m3ErrorMilligrams: 500, source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-500-g', nominalGrams: 500, m1ErrorMilligrams: 25, m2ErrorMilligrams: 80, m3ErrorMilligrams: 250,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-200-g', nominalGrams: 200, m1ErrorMilligrams: 10, m2ErrorMilligrams: 30, m3ErrorMilligrams: 100,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-100-g', nominalGrams: 100, m1ErrorMilligrams: 5, m2ErrorMilligrams: 16, m3ErrorMilligrams: 50,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-50-g', nominalGrams: 50, m1ErrorMilligrams: 3, m2ErrorMilligrams: 10, m3ErrorMilligrams: 30,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-20-g', nominalGrams: 20, m1ErrorMilligrams: 2.5, m2ErrorMilligrams: 8, m3ErrorMilligrams: 25,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-10-g', nominalGrams: 10, m1ErrorMilligrams: 2, m2ErrorMilligrams: 6, m3ErrorMilligrams: 20,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-5-g', nominalGrams: 5, m1ErrorMilligrams: 1.6, m2ErrorMilligrams: 5, m3ErrorMilligrams: 16,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-2-g', nominalGrams: 2, m1ErrorMilligrams: 1.2, m2ErrorMilligrams: 4, m3ErrorMilligrams: 12,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-1-g', nominalGrams: 1, m1ErrorMilligrams: 1, m2ErrorMilligrams: 3, m3ErrorMilligrams: 10,
    source: 'r111-gr', confidence: 'read',
  },
  {
    id: 'check-weight-0-5-g', nominalGrams: 0.5, m1ErrorMilligrams: 0.8, m2ErrorMilligrams: 2.5, source: 'r111-gr',
    confidence: 'read',
  },
  {
    id: 'check-weight-0-2-g', nominalGrams: 0.2, m1ErrorMilligrams: 0.6, m2ErrorMilligrams: 2, source: 'r111-gr',
    confidence: 'read',
  },
  {
    id: 'check-weight-0-1-g', nominalGrams: 0.1, m1ErrorMilligrams: 0.5, m2ErrorMilligrams: 1.6, source: 'r111-gr',
    confidence: 'read',
  },
];

export const checkWeightSources: readonly ReferenceSource[] = [
  {
    id: 'r111-gr',
    title: 'Weights for commercial transactions, maximum permissible errors of classes M1 to M3 after OIML R 111',
    where: 'Greek government consultation page, article 146', read: true,
  },
];
