import { type ExactInput, exact, type Quotient, toText } from '../quantity/index.ts';
import {
  addPercents,
  compareSums,
  type PercentSum,
  readPercent,
  toFraction,
  toPercent,
} from './percent-sum.ts';

/** What a qualified assessor's safety report covers. */
export interface SafetyReport {
  readonly reference: string;
  /** Day by which it is to be looked at again. */
  readonly reviewBy?: string;
  /** Bases and scents that it names; absent: it names none, and covers the formula by its materials alone. */
  readonly baseIds?: readonly string[];
  readonly scentIds?: readonly string[];
  readonly materials: readonly ReportedMaterial[];
}

/** Percent by mass of the finished product. */
export interface ReportedMaterial {
  readonly materialId: string;
  readonly name: string;
  readonly leastPercent?: ExactInput;
  readonly mostPercent: ExactInput;
}

export interface FormulaMaterial {
  readonly materialId: string;
  readonly name: string;
  readonly percent: ExactInput | Quotient;
}

export interface ReportQuestion {
  readonly report: SafetyReport;
  readonly baseId?: string;
  readonly scentId?: string;
  readonly materials: readonly FormulaMaterial[];
  readonly date: string;
  /** How long before its review-by day a report is called close to it. */
  readonly closeDays?: number;
}

export type ReportWord = 'within' | 'over' | 'below' | 'not-covered';

export interface ReportVerdict {
  readonly materialId: string;
  readonly name: string;
  readonly kind: 'assessor';
  readonly verdict: ReportWord;
  readonly percent: number;
  readonly leastPercent?: number;
  readonly mostPercent?: number;
  /** Exact distance to the bound that is broken, in percent of the product, as decimal text. */
  readonly differencePercent?: string;
}

export interface ReportAnswer {
  readonly reference: string;
  readonly verdict: 'within' | 'over' | 'not-covered';
  readonly materials: readonly ReportVerdict[];
  readonly coversBase: boolean;
  readonly coversScent: boolean;
  readonly review: 'none-set' | 'in-time' | 'close' | 'passed';
}

const DAY = 86_400_000;
const dayNumber = (date: string): number => Date.parse(`${date}T00:00:00Z`) / DAY;

/** An assessor needs weeks, and what changed has to be gathered first (common practice, no source). */
const REVIEW_CLOSE_DAYS = 60;

/** So many days before the day of its review, and on that day itself; the day after it is past. */
export const isReviewClose = (reviewBy: string, date: string, closeDays = REVIEW_CLOSE_DAYS): boolean =>
  date <= reviewBy && dayNumber(reviewBy) - dayNumber(date) <= closeDays;

function reviewOf({ report, date, closeDays }: ReportQuestion): ReportAnswer['review'] {
  if (report.reviewBy === undefined) return 'none-set';
  if (date > report.reviewBy) return 'passed';
  return isReviewClose(report.reviewBy, date, closeDays) ? 'close' : 'in-time';
}

interface Total {
  readonly name: string;
  readonly percent: PercentSum;
}

/** A material that stands in the formula twice is judged by its whole amount. */
function totalByMaterial(materials: readonly FormulaMaterial[]): Map<string, Total> {
  const totals = new Map<string, Total>();
  for (const { materialId, name, percent } of materials) {
    const known = totals.get(materialId);
    const own = readPercent(percent);
    totals.set(
      materialId,
      known ? { name: known.name, percent: addPercents([known.percent, own]) } : { name, percent: own },
    );
  }
  return totals;
}

/** Far below anything that is weighed: a difference without an end is told up to there, never as less than it is. */
const DIFFERENCE_PLACES = 30;

const differenceBetween = (larger: PercentSum, smaller: PercentSum): string =>
  toText(toFraction(larger).minus(toFraction(smaller)).roundedUp(DIFFERENCE_PLACES));

/** Every field written out, not spread: judged while a formula is typed (see tellVerdict). */
function judgeMaterial(
  materialId: string,
  { name, percent }: Total,
  reported: ReportedMaterial | undefined,
): ReportVerdict {
  const kind = 'assessor';
  const shown = toPercent(percent);
  if (reported === undefined) return { materialId, name, kind, percent: shown, verdict: 'not-covered' };
  const most = readPercent(reported.mostPercent);
  const least = readPercent(reported.leastPercent ?? 0);
  const isOver = compareSums(percent, most) > 0;
  const isBelow = !isOver && compareSums(percent, least) < 0;
  const verdict = {
    materialId,
    name,
    kind,
    percent: shown,
    leastPercent: toPercent(least),
    mostPercent: toPercent(most),
    verdict: isOver ? 'over' : isBelow ? 'below' : 'within',
  } as const;
  if (isOver) return { ...verdict, differencePercent: differenceBetween(percent, most) };
  return isBelow ? { ...verdict, differencePercent: differenceBetween(least, percent) } : verdict;
}

/** Materials that the report has from a least amount on and that the formula leaves out. */
function missingMaterials(report: SafetyReport, totals: ReadonlyMap<string, unknown>): ReportVerdict[] {
  return report.materials
    .filter(({ materialId, leastPercent }) => !totals.has(materialId) && exact(leastPercent ?? 0).gt(0))
    .map((reported) =>
      judgeMaterial(reported.materialId, { name: reported.name, percent: readPercent(0) }, reported),
    );
}

const covers = (ids: readonly string[] | undefined, id: string | undefined): boolean =>
  ids === undefined || id === undefined || ids.includes(id);

/**
 * Whether a formula lies within the assessor's report: base, scent, and every material by its range; both bounds are
 * allowed themselves. The report replaces remembered values and never loosens law or a Standard, which are judged
 * beside it.
 */
export function judgeReport(question: ReportQuestion): ReportAnswer {
  const { report, baseId, scentId } = question;
  const totals = totalByMaterial(question.materials);
  const reported = new Map(report.materials.map((material) => [material.materialId, material]));
  const materials = [
    ...[...totals].map(([materialId, total]) => judgeMaterial(materialId, total, reported.get(materialId))),
    ...missingMaterials(report, totals),
  ];
  const coversBase = covers(report.baseIds, baseId);
  const coversScent = covers(report.scentIds, scentId);
  const isOver = materials.some(({ verdict }) => verdict === 'over' || verdict === 'below');
  const isCovered = coversBase && coversScent && materials.every(({ verdict }) => verdict !== 'not-covered');
  return {
    reference: report.reference,
    verdict: isOver ? 'over' : isCovered ? 'within' : 'not-covered',
    materials,
    coversBase,
    coversScent,
    review: reviewOf(question),
  };
}
