import { fractionOf } from '../core/linear/index.ts';
import { type ExactInput, exact, toText } from '../core/quantity/index.ts';
import type { ScentBound } from '../core/safety/index.ts';
import type { KnownReport, OpenedRevision } from './checked.ts';
import { reportAsked } from './find-report.ts';
import { listSupplierLimits } from './list-supplier-limits.ts';
import { type OpenedPart, shareIn } from './open-part.ts';

export const boundsOfSuppliers = (whole: OpenedRevision, parts: readonly OpenedPart[]): ScentBound[] =>
  listSupplierLimits(whole).map(({ materialId, mostPercent, source }) => ({
    name: whole.materials.get(materialId)?.name ?? '',
    told: { kind: 'supplier', source, citation: source },
    weights: parts.map((part) => shareIn(part, materialId)),
    most: fractionOf(mostPercent),
  }));

/** Of what a report has a range for: the most of it, and the least where there is one. */
export interface ReportBounds {
  readonly most: ScentBound;
  readonly least: ScentBound | undefined;
}

/** The ranges are of the finished product: against a base, which is diluted first, none is held. */
export function boundsOfReport(
  report: KnownReport,
  whole: OpenedRevision,
  parts: readonly OpenedPart[],
): ReportBounds[] {
  if (whole.formula.kind === 'base') return [];
  const { reference, materials } = reportAsked(report, whole);
  return materials.map(({ materialId, name, leastPercent = 0, mostPercent }) => {
    const bound = {
      name,
      told: { kind: 'assessor', source: reference, citation: reference } as const,
      weights: parts.map((part) => shareIn(part, materialId)),
    };
    return {
      most: { ...bound, most: fractionOf(mostPercent) },
      least: exact(leastPercent).gt(0) ? atLeast(bound, leastPercent) : undefined,
    };
  });
}

/** At least so much is at most so much of its negative. */
const atLeast = (bound: Omit<ScentBound, 'most'>, percent: ExactInput): ScentBound => ({
  ...bound,
  weights: bound.weights.map((weight) => weight.negated()),
  most: fractionOf(percent).negated(),
  leastPercent: toText(exact(percent)),
});
