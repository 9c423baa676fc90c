import { type Problem, problem } from '../../core/problem.ts';
import {
  findMaterial,
  giveUp,
  insertMaterial,
  listMaterials,
  type MaterialRow,
  updateMaterial,
  type Writer,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { judgeMaterial } from './judge-material.ts';
import { type MaterialDetails, rowsOfMaterial } from './material-view.ts';

export const saveMaterial: UseCase<'saveMaterial'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const current = body.id === undefined ? undefined : await findMaterial(tx, body.id);
      if (body.id !== undefined && !current) giveUp(thingNotFound('id', body.id));
      const problems = [
        ...judgeMaterial(body.details),
        ...(await judgeAmongOthers(tx, current, body.details)),
      ];
      if (problems.length > 0) giveUp(...problems);
      const id = current?.id ?? context.machine.newId();
      await tell({
        kind: current ? 'material-changed' : 'material-added',
        subjectKind: 'material',
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
  { details, version }: RequestOf<'saveMaterial'>['body'],
  current: MaterialRow | undefined,
): Promise<void> {
  const { material, constituents } = rowsOfMaterial(id, details);
  if (!current) return insertMaterial(tx, material, constituents);
  if (version === undefined || !(await updateMaterial(tx, material, constituents, version)))
    giveUp(changedMeanwhile(`material ${current.name}`, version, current.version, current.name));
}

/** Lots are told apart by material and supplier; and a material's lots are in grams or in pieces for good. */
async function judgeAmongOthers(
  tx: Writer,
  current: MaterialRow | undefined,
  details: MaterialDetails,
): Promise<Problem[]> {
  const isSame = (row: MaterialRow): boolean =>
    row.id !== current?.id &&
    row.name.toLowerCase() === details.name.toLowerCase() &&
    (JSON.parse(row.details) as MaterialDetails).supplier.toLowerCase() === details.supplier.toLowerCase();
  return [
    ...(current && current.kind !== details.kind
      ? [problem('material-kind-fixed', 'details.kind', { found: details.kind, allowed: current.kind })]
      : []),
    ...((await listMaterials(tx)).some(isSame)
      ? [problem('material-name-taken', 'details.name', { found: details.name })]
      : []),
  ];
}
