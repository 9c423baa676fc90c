import type { formulas } from '../../contract/index.ts';
import type { FormulaLookup, FormulaRecipe } from '../../core/formula/index.ts';
import type { EntryRow } from '../../storage/index.ts';
import { formulaLinesOf } from '../formulas/index.ts';
import { localDate } from '../local-date.ts';

/** A recipe as an entry of the chain told it. */
export interface ToldRevision {
  readonly formulaId: string;
  readonly number: number;
  readonly details: formulas.RevisionDetails;
  readonly on: string;
}

export const REVISION_KINDS = ['revision-added', 'revision-changed'];

export const toldRevisions = (entries: readonly EntryRow[], timeZone: string): ToldRevision[] =>
  entries.map((entry) => ({
    ...(JSON.parse(entry.payload) as Omit<ToldRevision, 'on'>),
    on: localDate(entry.happened_at, timeZone),
  }));

/**
 * Of each formula the revision that was in force when the report was signed: the newest for sale of those written up to
 * that day, and with it, or a trial where there was nothing else. Where nothing was written yet, what was written first.
 */
export function revisionsAtSigning(
  told: readonly ToldRevision[],
  signedOn: string,
): ReadonlyMap<string, ToldRevision> {
  const ofFormula = new Map<string, ToldRevision[]>();
  for (const one of told) {
    const known = ofFormula.get(one.formulaId) ?? [];
    ofFormula.set(one.formulaId, [...known, one]);
  }
  return new Map(
    [...ofFormula].flatMap(([id, all]) => {
      const chosen = inForceOf(all.filter(({ on }) => on <= signedOn)) ?? all[0];
      return chosen ? [[id, chosen] as const] : [];
    }),
  );
}

/** A draft that was written anew is what was written last of its number. */
function inForceOf(told: readonly ToldRevision[]): ToldRevision | undefined {
  const last = [...new Map(told.map((one) => [one.number, one])).values()];
  return last.findLast(({ details }) => details.standing === 'for-sale') ?? last.at(-1);
}

/** To open the bases as they were then. */
export function lookupOf(told: ReadonlyMap<string, ToldRevision>): FormulaLookup {
  const recipeOf = (formulaId: string): FormulaRecipe | undefined => {
    const one = told.get(formulaId);
    return (
      one && {
        formulaId,
        name: formulaId,
        lines: formulaLinesOf(
          one.details.lines.map(({ stage, itemKind, itemId, grams }) => ({
            stage,
            item_kind: itemKind,
            item_id: itemId,
            grams,
          })),
        ),
      }
    );
  };
  return { revision: recipeOf, base: recipeOf };
}
