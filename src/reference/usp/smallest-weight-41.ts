/**
 * Smallest net weight that a scale can weigh with a given relative tolerance: USP general chapter 41, Balances.
 * d is the readability (the displayed step), s the standard deviation of repeated weighings.
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface SmallestWeightRule extends SourcedRow {
  readonly text: string;
  readonly factor?: number;
  readonly repeatabilityFloorInReadability?: number;
  readonly smallestWeightInReadability?: number;
  readonly maxDeviationPercent?: number;
  readonly examples?: readonly SmallestWeightExample[];
}

export interface SmallestWeightExample {
  readonly repeatabilityGrams?: number;
  readonly readabilityGrams?: number;
  readonly relativeTolerance?: number;
  readonly smallestWeightGrams: number;
}

export const smallestWeightRules: readonly SmallestWeightRule[] = [
  {
    id: 'usp41-repeatability',
    text: 'repeatability: weigh one test weight at least 10 times; 2 s / smallest net weight <= 0.10 %; so m_min >= 2000 s',
    factor: 2000, source: 'usp-41', confidence: 'read',
    examples: [{ repeatabilityGrams: 0.00015, smallestWeightGrams: 0.3 }],
  },
  {
    id: 'usp41-floor',
    text: 'lowest possible starting point is 820 d: if s < 0.41 d use s = 0.41 d (the 0.41 d rule itself from memory)',
    repeatabilityFloorInReadability: 0.41, smallestWeightInReadability: 820, source: 'usp-41-summary',
    confidence: 'read', evidence: { repeatabilityFloorInReadability: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'usp41-accuracy',
    text: 'accuracy: reference weight between 5 % and 100 % of operating range, deviation <= 0.10 %',
    maxDeviationPercent: 0.1, source: 'usp-41-summary', confidence: 'read',
  },
  {
    id: 'smallest-weight-general', text: 'general tolerance r: m_min = 2 * max(s, 0.41 d) / r', source: 'calc',
    confidence: 'computed',
    examples: [
      { readabilityGrams: 1, relativeTolerance: 0.001, smallestWeightGrams: 820 },
      { readabilityGrams: 1, relativeTolerance: 0.01, smallestWeightGrams: 82 },
      { readabilityGrams: 1, relativeTolerance: 0.02, smallestWeightGrams: 41 },
      { readabilityGrams: 1, relativeTolerance: 0.05, smallestWeightGrams: 16.4 },
      { readabilityGrams: 1, relativeTolerance: 0.1, smallestWeightGrams: 8.2 },
      { readabilityGrams: 0.1, relativeTolerance: 0.001, smallestWeightGrams: 82 },
      { readabilityGrams: 0.1, relativeTolerance: 0.01, smallestWeightGrams: 8.2 },
      { readabilityGrams: 0.1, relativeTolerance: 0.02, smallestWeightGrams: 4.1 },
      { readabilityGrams: 0.1, relativeTolerance: 0.05, smallestWeightGrams: 1.64 },
      { readabilityGrams: 0.1, relativeTolerance: 0.1, smallestWeightGrams: 0.82 },
      { readabilityGrams: 0.01, relativeTolerance: 0.001, smallestWeightGrams: 8.2 },
      { readabilityGrams: 0.01, relativeTolerance: 0.01, smallestWeightGrams: 0.82 },
      { readabilityGrams: 0.01, relativeTolerance: 0.02, smallestWeightGrams: 0.41 },
      { readabilityGrams: 0.01, relativeTolerance: 0.05, smallestWeightGrams: 0.164 },
      { readabilityGrams: 0.01, relativeTolerance: 0.1, smallestWeightGrams: 0.082 },
      { readabilityGrams: 0.001, relativeTolerance: 0.001, smallestWeightGrams: 0.82 },
      { readabilityGrams: 0.001, relativeTolerance: 0.01, smallestWeightGrams: 0.082 },
      { readabilityGrams: 0.001, relativeTolerance: 0.02, smallestWeightGrams: 0.041 },
      { readabilityGrams: 0.001, relativeTolerance: 0.05, smallestWeightGrams: 0.0164 },
      { readabilityGrams: 0.001, relativeTolerance: 0.1, smallestWeightGrams: 0.0082 },
    ],
  },
];

export const smallestWeightSources: readonly ReferenceSource[] = [
  {
    id: 'usp-41', title: 'USP general chapter 41 Balances, text of August 2019 as quoted in a forum',
    where: 'forum thread', read: true,
  },
  {
    id: 'usp-41-summary', title: 'Summary of changes to USP chapter 41 by a balance maker',
    where: "balance maker's page", read: true,
  },
  { id: 'calc', title: 'Own computation', where: 'own computation', read: true },
  { id: 'memory', title: 'From memory, not confirmed in a printed text', where: 'not seen in print', read: false },
];
