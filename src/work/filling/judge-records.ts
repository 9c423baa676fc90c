import { netContentsTables } from '../../catalogue/index.ts';
import {
  type FillVerdict,
  judgeFill,
  judgeRun,
  type RunVerdict,
  type TolerableError,
} from '../../core/filling/index.ts';
import { must } from '../../core/problem.ts';
import { type Exact, gramsFromMicrograms } from '../../core/quantity/index.ts';
import type { SignedWeight } from '../../storage/index.ts';
import { netGramsOf } from './net-grams-of.ts';
import { isTin, type RunRecords } from './run-records.ts';

/** The run's verdict as it stands: struck weights left out, the scale's error as it was when the run began. */
export const judgeRecords = (
  records: RunRecords,
  tins: readonly SignedWeight[] = standing(records),
  isOver = records.close !== undefined,
): RunVerdict =>
  must(
    judgeRun(
      {
        declaredGrams: records.details.declaredGrams,
        basis: records.details.fillBasis,
        wanted: records.head.wanted,
        netGrams: tins.map(netGramsOf),
        errorsGrams: tins.map((row) => errorGramsOf(records, row)),
        scaleErrorGrams: gramsFromMicrograms(records.head.scale_error_ug),
        isOver,
      },
      netContentsTables,
    ),
  );

/** Tins that may stay as they are: none too light; by the average way, none below limit 2. */
export function countingTins(records: RunRecords, { limits, judgedBy }: RunVerdict): SignedWeight[] {
  return standing(records).filter((row) =>
    judgedBy === 'average' && limits
      ? netGramsOf(row).gte(limits.limit2)
      : judgeWeight(records, row, limits).verdict !== 'too-light',
  );
}

export const standing = ({ weights }: RunRecords): SignedWeight[] => weights.filter(isTin);

/** Weighed on a scale that had not passed its check: by how much that may be out nobody knows. */
export const weighedHeld = (records: RunRecords): SignedWeight[] =>
  standing(records).filter(
    ({ sure }) => sure !== null && (JSON.parse(sure) as string[]).includes('scale-held'),
  );

/** The worst error of this weight, as it was weighed. */
export const errorGramsOf = ({ head }: RunRecords, row: SignedWeight): Exact =>
  gramsFromMicrograms(row.error_ug ?? head.begun_error_ug);

export const judgeWeight = (
  records: RunRecords,
  row: SignedWeight,
  limits: TolerableError | null,
): FillVerdict => {
  const { head, details } = records;
  return must(
    judgeFill({
      declaredGrams: details.declaredGrams,
      basis: details.fillBasis,
      netGrams: netGramsOf(row),
      scaleErrorGrams: errorGramsOf(records, row),
      tolerableErrorGrams: limits?.tolerableError ?? null,
      aimGrams: gramsFromMicrograms(head.aim_ug),
    }),
  );
};
