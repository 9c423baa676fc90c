import type { Market } from '../contract/index.ts';
import type { SafetyReport } from '../core/safety/index.ts';
import type { AskedProduct, KnownReport, OpenedRevision, ReportDetails } from './checked.ts';
import { usesOf } from './uses-of.ts';

export interface ReportQuestion {
  readonly opened: OpenedRevision;
  readonly today: string;
  /** Products that it is asked for, where they are known. */
  readonly products: readonly AskedProduct[];
}

/** The newest report, by the day it was signed, that covers the formula for each of its uses in this market. */
export function findReport(
  reports: readonly KnownReport[],
  { opened, today, products }: ReportQuestion,
  market: Market,
): KnownReport | undefined {
  return reports
    .filter(({ details }) => details.signedOn <= today && details.markets.includes(market))
    .filter(({ details }) => products.length === 0 || products.some((each) => isNamed(details, each)))
    .filter(({ details }) => usesOf(opened.details).every(({ use }) => details.uses.includes(use)))
    .filter((report) => isAbout(report, opened))
    .sort((one, other) => other.details.signedOn.localeCompare(one.details.signedOn))[0];
}

/** A report that names no products covers every one that is filled from what it is about. Older ones have no list. */
export const isNamed = ({ productIds = [] }: Partial<ReportDetails>, { id }: AskedProduct): boolean =>
  productIds.length === 0 || productIds.includes(id);

const isAbout = ({ details }: KnownReport, { formula }: OpenedRevision): boolean =>
  formula.kind === 'base' ? details.baseFormulaId === formula.id : details.formulaIds.includes(formula.id);

/**
 * The report as it is judged. A base is diluted before it is sold, so the ranges, which are of the finished product,
 * cannot be held against it: for a base the report only has to know each material.
 */
export function reportAsked({ details, materialNames }: KnownReport, opened: OpenedRevision): SafetyReport {
  const isBase = opened.formula.kind === 'base';
  return {
    reference: details.reference,
    reviewBy: details.reviewBy,
    ...(details.baseFormulaId !== null && { baseIds: [details.baseFormulaId] }),
    ...(details.formulaIds.length > 0 && { scentIds: details.formulaIds }),
    materials: details.ranges.map((range) => ({
      materialId: range.materialId,
      name: materialNames.get(range.materialId) ?? '',
      leastPercent: isBase ? '0' : range.leastPercent,
      mostPercent: isBase ? '100' : range.mostPercent,
    })),
  };
}

/** Which base the report has to name: the one that it does not, where there are several. */
export function baseAsked(
  { details }: KnownReport,
  { formula, baseIds }: OpenedRevision,
): string | undefined {
  if (formula.kind === 'base') return formula.id;
  return baseIds.find((id) => id !== details.baseFormulaId) ?? baseIds[0];
}
