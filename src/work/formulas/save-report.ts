import { type Problem, problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import {
  findMaterials,
  findReport,
  giveUp,
  insertReport,
  listFormulas,
  listProducts,
  type ReportRow,
  updateReport,
  type Writer,
} from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import type { ReportDetails } from './report-view.ts';

export const saveReport: UseCase<'saveReport'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const current = body.id === undefined ? undefined : await findReport(tx, body.id);
      if (body.id !== undefined && !current) giveUp(thingNotFound('id', body.id));
      const today = await workshopToday(inside(context, tx));
      const problems = [...judgeReportDetails(body.details, today), ...(await judgeNamed(tx, body.details))];
      if (problems.length > 0) giveUp(...problems);
      const id = current?.id ?? context.machine.newId();
      await tell({
        kind: current ? 'report-changed' : 'report-added',
        subjectKind: 'report',
        subjectId: id,
        payload: body.details,
      });
      await write(tx, id, body, current);
      return id;
    },
    viewId,
  );

async function write(
  tx: Writer,
  id: string,
  { details, version }: RequestOf<'saveReport'>['body'],
  current: ReportRow | undefined,
): Promise<void> {
  const { formulaIds, ranges, ...rest } = details;
  const row = {
    id,
    reference: details.reference,
    base_formula_id: details.baseFormulaId,
    review_by: details.reviewBy,
    details: JSON.stringify(rest),
    attachment_id: null,
    version: 1,
  };
  const parts = {
    formulaIds,
    ranges: ranges.map((range) => ({
      material_id: range.materialId,
      least_percent: range.leastPercent,
      most_percent: range.mostPercent,
    })),
  };
  if (!current) return insertReport(tx, row, parts);
  if (version === undefined || !(await updateReport(tx, row, parts, version)))
    giveUp(changedMeanwhile(`report ${current.reference}`, version, current.version, current.reference));
}

function judgeReportDetails(details: ReportDetails, today: string): Problem[] {
  const { baseFormulaId, formulaIds, productIds, signedOn, reviewBy, ranges } = details;
  return [
    ...(baseFormulaId === null && formulaIds.length === 0
      ? [problem('report-covers-nothing', 'details.formulaIds', { found: 0, allowed: 1 })]
      : []),
    ...(signedOn > today
      ? [problem('report-signed-ahead', 'details.signedOn', { found: signedOn, allowed: today })]
      : []),
    ...(reviewBy <= signedOn
      ? [problem('review-before-signing', 'details.reviewBy', { found: reviewBy, allowed: signedOn })]
      : []),
    ...twice(formulaIds, 'details.formulaIds'),
    ...twice(productIds, 'details.productIds'),
    ...twice(
      ranges.map((range) => range.materialId),
      'details.ranges',
    ),
    ...ranges.flatMap(judgeRange),
  ];
}

const twice = (ids: readonly string[], where: string): Problem[] =>
  ids
    .map((id, index) => ({ id, index }))
    .filter(({ id, index }) => ids.indexOf(id) !== index)
    .map(({ index }) => problem('listed-twice', `${where}[${index}]`));

const judgeRange = (range: ReportDetails['ranges'][number], index: number): Problem[] =>
  exact(range.leastPercent).gt(range.mostPercent)
    ? [
        problem('report-range-crossed', `details.ranges[${index}]`, {
          found: range.leastPercent,
          allowed: range.mostPercent,
        }),
      ]
    : [];

/** Base, formulas and materials must be there, and be what they are named as. */
async function judgeNamed(tx: Writer, details: ReportDetails): Promise<Problem[]> {
  const { baseFormulaId } = details;
  const formulas = new Map((await listFormulas(tx)).map((row) => [row.id, row]));
  const materialIds = details.ranges.map((range) => range.materialId);
  const materials = new Set((await findMaterials(tx, materialIds)).map((row) => row.id));
  const products = new Set((await listProducts(tx)).map((row) => row.id));
  const base = baseFormulaId === null ? undefined : formulas.get(baseFormulaId);
  return [
    ...(baseFormulaId !== null && !base ? [thingNotFound('details.baseFormulaId', baseFormulaId)] : []),
    ...(base && base.kind !== 'base'
      ? [problem('report-base-is-mixture', 'details.baseFormulaId', { found: base.name })]
      : []),
    ...details.formulaIds.flatMap((id, index) =>
      formulas.has(id) ? [] : [thingNotFound(`details.formulaIds[${index}]`, id)],
    ),
    ...details.productIds.flatMap((id, index) =>
      products.has(id) ? [] : [thingNotFound(`details.productIds[${index}]`, id)],
    ),
    ...materialIds.flatMap((id, index) =>
      materials.has(id) ? [] : [thingNotFound(`details.ranges[${index}].materialId`, id)],
    ),
  ];
}
