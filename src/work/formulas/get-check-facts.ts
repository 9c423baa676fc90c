import type { CheckFacts } from '../../check/index.ts';
import { done, refused } from '../../core/problem.ts';
import {
  findFormula,
  listDecisions,
  listFormulas,
  listMaterials,
  listRevisionLines,
  listRevisions,
  type Reader,
  type RevisionHead,
  type SignedDecision,
} from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { thingNotFound } from '../record.ts';
import { viewMaterials } from '../stock/material-view.ts';
import type { UseCase } from '../use-case.ts';
import { readSoldIn } from './read-sold-in.ts';
import { readAllReports } from './report-view.ts';
import { pickInForce } from './revisions-in-force.ts';

/** Everything that a check hangs on but the lines themselves, in one reading: the page then judges what is typed. */
export const getCheckFacts: UseCase<'getCheckFacts'> = (context, { params: { id = '' } }) =>
  context.storage.db.transaction().execute(async (tx) => {
    const formula = await findFormula(tx, id);
    if (!formula) return refused(thingNotFound('id', id));
    const heads = await listRevisions(tx);
    const latest = heads.filter((head) => head.formula_id === id).at(-1);
    const ingredients = (await listMaterials(tx)).filter((row) => row.kind === 'ingredient');
    const sold = await readSoldIn(tx, id);
    return done({
      formula: { id, name: formula.name, kind: formula.kind },
      revision: { id: latest?.id ?? id, number: latest?.number ?? 1 },
      today: await workshopToday(inside(context, tx)),
      sold: {
        products: [...sold.products],
        markets: [...sold.markets],
        scentOnLabel: [...sold.scentOnLabel],
      },
      bases: await readBases(tx, id, heads),
      materials: await viewMaterials(tx, ingredients),
      reports: (await readAllReports(tx)).map(({ row, details }) => ({ id: row.id, details })),
      decisions: latest ? (await listDecisions(tx, latest.id)).map(viewDecision) : [],
    });
  });

async function readBases(
  db: Reader,
  ownId: string,
  heads: readonly RevisionHead[],
): Promise<CheckFacts['bases']> {
  const bases = (await listFormulas(db)).filter((row) => row.kind === 'base' && row.id !== ownId);
  const newest = new Map(heads.map((head) => [head.formula_id, head.id]));
  const inForce = new Map(pickInForce(heads).map((head) => [head.formula_id, head.id]));
  const lines = await listRevisionLines(db, [
    ...new Set(bases.flatMap(({ id }) => [newest.get(id) ?? [], inForce.get(id) ?? []].flat())),
  ]);
  const linesOf = (revisionId: string | undefined) =>
    lines
      .filter((line) => line.revision_id === revisionId)
      .map((line) => ({
        stage: line.stage,
        itemKind: line.item_kind as 'material' | 'formula',
        itemId: line.item_id,
        grams: line.grams,
      }));
  return bases.map(({ id, name }) => ({
    formulaId: id,
    name,
    inForce: linesOf(inForce.get(id)),
    newest: linesOf(newest.get(id)),
  }));
}

const viewDecision = (decision: SignedDecision): CheckFacts['decisions'][number] => ({
  entryId: decision.entry_id,
  key: decision.unknown_key,
  verdict: decision.verdict as CheckFacts['decisions'][number]['verdict'],
  reason: decision.reason,
  upon: JSON.parse(decision.upon) as Record<string, string>,
  by: decision.person_name,
  at: decision.happened_at,
});
