import { type Problem, problem } from '../../core/problem.ts';
import {
  type FormulaRow,
  giveUp,
  insertFormula,
  listFormulas,
  listRevisions,
  updateFormula,
  type Writer,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';

type Body = RequestOf<'saveFormula'>['body'];

export const saveFormula: UseCase<'saveFormula'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const all = await listFormulas(tx);
      const current = all.find((row) => row.id === body.id);
      if (body.id !== undefined && !current) giveUp(thingNotFound('id', body.id));
      const problems = [...judgeNames(all, body), ...(await judgeKind(tx, current, body))];
      if (problems.length > 0) giveUp(...problems);
      const { name, code, kind } = body;
      const row = { id: current?.id ?? context.machine.newId(), name, code, kind, version: 1 };
      await tell({
        kind: current ? 'formula-changed' : 'formula-added',
        subjectKind: 'formula',
        subjectId: row.id,
        payload: { name, code, kind },
      });
      if (!current) await insertFormula(tx, row);
      else if (body.version === undefined || !(await updateFormula(tx, row, body.version)))
        giveUp(changedMeanwhile(`formula ${current.name}`, body.version, current.version, current.name));
      return row.id;
    },
    viewId,
  );

/** Batch numbers open with the letters, so each formula has its own. */
function judgeNames(all: readonly FormulaRow[], body: Body): Problem[] {
  const others = all.filter((row) => row.id !== body.id);
  const parameters = (row: FormulaRow) => ({ parameters: { formula: row.name } });
  const sameCode = others.find((row) => row.code === body.code);
  const sameName = others.find((row) => row.name.toLowerCase() === body.name.toLowerCase());
  return [
    ...(sameCode
      ? [problem('formula-code-taken', 'code', { found: body.code, ...parameters(sameCode) })]
      : []),
    ...(sameName ? [problem('formula-name-taken', 'name', { found: body.name })] : []),
  ];
}

/** What is written down was judged as a base or as a mixture: from then on it stays one. */
async function judgeKind(tx: Writer, current: FormulaRow | undefined, body: Body): Promise<Problem[]> {
  if (!current || current.kind === body.kind) return [];
  return (await listRevisions(tx, current.id)).length > 0
    ? [problem('formula-kind-fixed', 'kind', { found: body.kind, allowed: current.kind })]
    : [];
}
