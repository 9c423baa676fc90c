import type { NetContentsTables, Rounding, TargetRule } from '../core/filling/index.ts';
import {
  countTests,
  figureHeights,
  measuringErrorRules,
  netContentsScope,
  packersRules,
  targetQuantityRules,
  tolerableErrorRoundings,
  tolerableErrors,
} from '../reference/index.ts';
import { rowById } from './row-by-id.ts';

const DECIDES = { A: 'nominal', B: 'limit-1', C: 'limit-2' } as const;

function targetRules(): TargetRule[] {
  return targetQuantityRules.flatMap(({ rule, tolerableErrorMultiple, deviationMultiple }) =>
    rule === undefined || tolerableErrorMultiple === undefined || deviationMultiple === undefined
      ? []
      : [{ decides: DECIDES[rule], tolerableErrorMultiple, deviationMultiple }],
  );
}

function roundingRule(id: string): NetContentsTables['roundings'][Rounding] {
  const { steps, appliesTo } = rowById(tolerableErrorRoundings, id);
  if (steps === undefined) throw new Error(`the reference row ${id} has no steps`);
  return { steps, ...(appliesTo && { appliesTo }) };
}

function given<Value>(value: Value | undefined, what: string): Value {
  if (value === undefined) throw new Error(`the reference tables lack ${what}`);
  return value;
}

/** The published net-contents tables, bound for core/filling. */
export const netContentsTables: NetContentsTables = {
  tolerableErrors,
  roundings: { 'up-0.1': roundingRule('rounding-gb-eu'), r87: roundingRule('rounding-r87-australia') },
  averageSystem: given(
    rowById(netContentsScope, 'average-system-range').nominalGramsOrMl,
    'the average range',
  ),
  measuringErrorFraction: rowById(measuringErrorRules, 'measuring-error').fractionOfTolerableError,
  countTests,
  mayLieBelowLimit1Fraction: given(
    rowById(packersRules, 'packers-rule-2').workingLimitFraction,
    'the working figure of packers’ second rule',
  ),
  figureHeights,
  targetRules: targetRules(),
};
