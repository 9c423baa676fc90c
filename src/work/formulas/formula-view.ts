import type { z } from 'zod';
import type { formulas } from '../../contract/index.ts';
import { done, refused } from '../../core/problem.ts';
import {
  type FormulaRow,
  findFormula,
  listRevisions,
  type Reader,
  type RevisionHead,
  listFormulas as readFormulas,
} from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { marketsToJudge, openSoldIn } from './read-sold-in.ts';
import { viewRevision, viewRevisions } from './revision-view.ts';
import { pickInForce, standingOf } from './revisions-in-force.ts';

export type FormulaView = z.output<typeof formulas.formulaView>;

export const listFormulas: UseCase<'listFormulas'> = async ({ storage: { db } }) =>
  done(await viewFormulas(db, await readFormulas(db), await listRevisions(db)));

export const getFormula: UseCase<'getFormula'> = async ({ storage: { db } }, { params: { id = '' } }) => {
  const row = await findFormula(db, id);
  const [view] = row ? await viewFormulas(db, [row], await listRevisions(db, id)) : [];
  return view ? done(view) : refused(thingNotFound('id', id));
};

export const getRevision: UseCase<'getRevision'> = ({ storage: { db } }, { params: { id = '' } }) =>
  viewRevision(db, id);

async function viewFormulas(
  db: Reader,
  rows: readonly FormulaRow[],
  heads: readonly RevisionHead[],
): Promise<FormulaView[]> {
  const inForce = new Map(pickInForce(heads).map((head) => [head.formula_id, head.id]));
  const soldIn = await openSoldIn(db);
  const newest = new Map(heads.map((head) => [head.formula_id, head]));
  const latest = await viewRevisions(db, [...newest.values()]);
  return rows.map((row) => ({
    id: row.id,
    version: row.version,
    name: row.name,
    code: row.code,
    kind: row.kind as FormulaView['kind'],
    revisions: heads.filter((head) => head.formula_id === row.id).map(viewHead),
    inForceId: inForce.get(row.id) ?? null,
    soldIn: [...marketsToJudge(soldIn(row.id))],
    latest: latest.find((view) => view.formulaId === row.id) ?? null,
  }));
}

const viewHead = (head: RevisionHead): FormulaView['revisions'][number] => ({
  id: head.id,
  number: head.number,
  standing: standingOf(head),
  isFixed: head.is_fixed,
});
