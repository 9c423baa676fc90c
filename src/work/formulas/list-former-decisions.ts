import type { z } from 'zod';
import { decisionsByKey, standingDecisions } from '../../check/index.ts';
import type { formulas } from '../../contract/index.ts';
import { done, refused } from '../../core/problem.ts';
import { type FormerDecision, findRevision, listFormerDecisions as read } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';

type View = z.output<typeof formulas.formerDecision>;

/** What counts on each question of each earlier revision: a decision that was taken back says nothing any more. */
export const listFormerDecisions: UseCase<'listFormerDecisions'> = async (
  { storage },
  { params: { id = '' } },
) => {
  const revision = await findRevision(storage.db, id);
  if (!revision) return refused(thingNotFound('id', id));
  const former = await read(storage.db, revision.formula_id, revision.number);
  const numbers = [...new Set(former.map((row) => row.revision_number))].sort((one, other) => other - one);
  return done(
    numbers.flatMap((number) => viewStanding(former.filter((row) => row.revision_number === number))),
  );
};

function viewStanding(ofRevision: readonly FormerDecision[]): View[] {
  const byEntry = new Map(ofRevision.map((row) => [row.entry_id, row]));
  return [...standingDecisions(decisionsByKey(ofRevision))].flatMap(([marketKey, { entry_id }]) => {
    const row = byEntry.get(entry_id);
    return row ? [viewFormer(marketKey, row)] : [];
  });
}

const viewFormer = (marketKey: string, row: FormerDecision): View => ({
  marketKey,
  revision: row.revision_number,
  entryId: row.entry_id,
  verdict: row.verdict as View['verdict'],
  by: row.person_name,
  reason: row.reason,
  at: row.happened_at,
});
