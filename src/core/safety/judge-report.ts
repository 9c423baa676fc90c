import { type Exact, type ExactInput, exact, toText } from '../quantity/index.ts';

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
  readonly percent: ExactInput;
}

export interface ReportQuestion {
  readonly report: SafetyReport;
  readonly baseId?: string;
  readonly scentId?: string;
  readonly materials: readonly FormulaMaterial[];
  readonly date: string;
  /** How long before its review-by day a report is called close to it. Default: 60 days (common practice, no source). */
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

function reviewOf({ report, date, closeDays = 60 }: ReportQuestion): ReportAnswer['review'] {
  if (report.reviewBy === undefined) return 'none-set';
  if (date > report.reviewBy) return 'passed';
  return dayNumber(report.reviewBy) - dayNumber(date) <= closeDays ? 'close' : 'in-time';
}

/** A material that stands in the formula twice is judged by its whole amount. */
function totalByMaterial(
  materials: readonly FormulaMaterial[],
): Map<string, { name: string; percent: Exact }> {
  const totals = new Map<string, { name: string; percent: Exact }>();
  for (const { materialId, name, percent } of materials) {
    const known = totals.get(materialId);
    totals.set(materialId, { name: known?.name ?? name, percent: exact(percent).plus(known?.percent ?? 0) });
  }
  return totals;
}

function judgeMaterial(
  materialId: string,
  { name, percent }: { readonly name: string; readonly percent: Exact },
  reported: ReportedMaterial | undefined,
): ReportVerdict {
  const told = { materialId, name, kind: 'assessor', percent: percent.toNumber() } as const;
  if (reported === undefined) return { ...told, verdict: 'not-covered' };
  const most = exact(reported.mostPercent);
  const least = exact(reported.leastPercent ?? 0);
  const range = { leastPercent: least.toNumber(), mostPercent: most.toNumber() };
  if (percent.gt(most)) {
    return { ...told, ...range, verdict: 'over', differencePercent: toText(percent.minus(most)) };
  }
  if (percent.lt(least)) {
    return { ...told, ...range, verdict: 'below', differencePercent: toText(least.minus(percent)) };
  }
  return { ...told, ...range, verdict: 'within' };
}

/** Materials that the report has from a least amount on and that the formula leaves out. */
function missingMaterials(report: SafetyReport, totals: ReadonlyMap<string, unknown>): ReportVerdict[] {
  return report.materials
    .filter(({ materialId, leastPercent }) => !totals.has(materialId) && exact(leastPercent ?? 0).gt(0))
    .map((reported) =>
      judgeMaterial(reported.materialId, { name: reported.name, percent: exact(0) }, reported),
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
