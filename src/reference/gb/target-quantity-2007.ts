/**
 * Target quantity of a filling run on the average system: guidance note to SI 2006/659, Annex C (URN 07/1343, 2007).
 * The formulas are from memory: show as "from memory, check".
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface TargetQuantityRule extends SourcedRow {
  readonly rule?: 'A' | 'B' | 'C';
  /** Qt target, Qn nominal, TNE tolerable negative error, s standard deviation of the fill. */
  readonly formula: string;
  readonly tolerableErrorMultiple?: number;
  readonly deviationMultiple?: number;
  readonly basis?: string;
  readonly note?: string;
}

export const targetQuantityRules: readonly TargetQuantityRule[] = [
  {
    id: 'target-rule-a', rule: 'A', formula: 'Qt >= Qn', tolerableErrorMultiple: 0, deviationMultiple: 0,
    source: 'uk-guide-c', confidence: 'memory',
  },
  {
    id: 'target-rule-b', rule: 'B', formula: 'Qt >= Qn - TNE + 2 s', tolerableErrorMultiple: 1, deviationMultiple: 2,
    basis: 'at most 2.5 % below T1', source: 'uk-guide-c', confidence: 'memory',
  },
  {
    id: 'target-rule-c', rule: 'C', formula: 'Qt >= Qn - 2 TNE + 3.72 s', tolerableErrorMultiple: 2,
    deviationMultiple: 3.72, basis: 'about 1 in 10000 below T2', source: 'uk-guide-c', confidence: 'memory',
  },
  {
    id: 'target-which-governs', formula: 'A if s <= TNE/2; B if TNE/2 < s <= TNE/1.72; C if s > TNE/1.72',
    note: 'solving 2s=TNE and 2s-TNE=3.72s-2TNE', source: 'calc', confidence: 'computed',
  },
  {
    id: 'target-allowances',
    formula: 'add allowances for wandering mean, sampling, storage loss, filling temperature, tare variation (names of the allowances read in the scenario)',
    source: 'uk-guide-c', confidence: 'memory',
  },
];

export const targetQuantitySources: readonly ReferenceSource[] = [
  {
    id: 'uk-guide-c',
    title: 'UK guidance note on the 2006 Regulations, Annex C (quality control systems): target quantity rules. Only the scenario of its example was read; the formulas and answers are from memory',
    where: 'DTI/BERR URN 07/1343 (2007), NMRO v4 (2015), OPSS (2021)', read: false,
  },
  { id: 'calc', title: 'Own computation (formula given in the row)', where: 'own computation', read: true },
];
