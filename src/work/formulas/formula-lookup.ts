import type { FormulaLookup, FormulaRecipe } from '../../core/formula/index.ts';
import {
  findRevision,
  listFormulas,
  listLatestRevisions,
  listRevisionLines,
  type NamedRevisionLine,
  type Reader,
} from '../../storage/index.ts';
import { formulaLinesOf } from './formula-lines.ts';
import type { RevisionDetails } from './revision-view.ts';
import { listRevisionsInForce, standingOf } from './revisions-in-force.ts';

/** A revision that is not written yet, judged as if it were in force. */
export interface DraftRecipe extends FormulaRecipe {
  readonly revisionId: string;
  readonly standing: RevisionDetails['standing'];
}

/**
 * Everything that opening a formula may need: of each formula the revision in force, and the revision asked for, if one is. What is
 * a trial itself is tried out with the newest revision of each base, be that a trial too. A workshop has dozens of formulas, so all are read at once.
 */
export async function readFormulaLookup(
  db: Reader,
  asked: { readonly revisionId?: string; readonly draft?: DraftRecipe } = {},
): Promise<FormulaLookup> {
  const names = new Map((await listFormulas(db)).map((row) => [row.id, row.name]));
  const { revisionId, draft } = asked;
  const own = revisionId === undefined ? undefined : await findRevision(db, revisionId);
  const isTrial = (draft?.standing ?? (own && standingOf(own))) === 'trial';
  const latest = isTrial ? await listLatestRevisions(db) : await listRevisionsInForce(db);
  const heads = own ? [...latest, own] : latest;
  const lines = groupByRevision(
    await listRevisionLines(
      db,
      heads.map((head) => head.id),
    ),
  );
  const recipeOf = (head: (typeof heads)[number]): FormulaRecipe => ({
    formulaId: head.formula_id,
    name: names.get(head.formula_id) ?? '',
    lines: formulaLinesOf(lines.get(head.id) ?? []),
  });
  const inForce = new Map(latest.map((head) => [head.formula_id, recipeOf(head)]));
  if (draft) inForce.set(draft.formulaId, draft);
  return {
    revision: (id) => {
      if (draft?.revisionId === id) return draft;
      const head = heads.find((row) => row.id === id);
      return head && recipeOf(head);
    },
    base: (formulaId) => inForce.get(formulaId),
  };
}

function groupByRevision(lines: readonly NamedRevisionLine[]): Map<string, NamedRevisionLine[]> {
  const groups = new Map<string, NamedRevisionLine[]>();
  for (const line of lines) {
    const group = groups.get(line.revision_id);
    if (group) group.push(line);
    else groups.set(line.revision_id, [line]);
  }
  return groups;
}
