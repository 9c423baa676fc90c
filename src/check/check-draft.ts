import type { z } from 'zod';
import type { formulas, Market } from '../contract/index.ts';
import { expandFormula, type FormulaLine, type FormulaRecipe } from '../core/formula/index.ts';
import { done, type Result } from '../core/problem.ts';
import type { KnownReport, RevisionDetails, SignedDecision } from './checked.ts';
import { EVERYWHERE } from './everywhere.ts';
import { judgeFormula } from './judge-formula.ts';
import { openComposition } from './open-composition.ts';
import { type RevisionCheck, viewCheck } from './view-check.ts';

export type CheckFacts = z.output<typeof formulas.checkFacts>;
type Line = RevisionDetails['lines'][number];

/** A formula as it is being typed: what it is judged as, and its lines. */
export type FormulaDraft = Omit<RevisionDetails, 'steps'>;

/**
 * The check of what is not written yet, by the same code as the check of what is. `materials` and `reports` are read
 * once for all drafts: see readFacts.
 */
export function checkDraft(
  facts: ReadFacts,
  { lines, ...details }: FormulaDraft,
  markets: readonly Market[],
): Result<RevisionCheck> {
  const { formula, revision, today, sold } = facts;
  const recipe = { formulaId: formula.id, name: formula.name, lines: linesOf(lines) };
  const expanded = expandFormula(DRAFT, lookUp(facts, recipe, details.standing));
  if (!expanded.ok) return expanded;
  const opened = openComposition({
    revision,
    details,
    formula,
    baseIds: lines.filter((line) => line.itemKind === 'formula').map((line) => line.itemId),
    expanded: expanded.value,
    materials: new Map(
      expanded.value.materials.flatMap(({ materialId }) => {
        const material = facts.materials.get(materialId);
        return material ? [[materialId, material] as const] : [];
      }),
    ),
  });
  if (!opened.ok) return opened;
  const { reports, decisions } = facts;
  const { products } = sold;
  const judge = (where: readonly Market[]) =>
    judgeFormula({ opened: opened.value, markets: where, today, reports, decisions, products });
  return done(viewCheck(judge(markets), judge(EVERYWHERE), sold));
}

export const DRAFT = 'draft';

export interface ReadFacts extends Pick<CheckFacts, 'formula' | 'revision' | 'today' | 'sold'> {
  readonly materials: ReadonlyMap<string, CheckFacts['materials'][number]['details']>;
  readonly reports: readonly KnownReport[];
  readonly decisions: readonly SignedDecision[];
  readonly inForce: ReadonlyMap<string, FormulaRecipe>;
  readonly newest: ReadonlyMap<string, FormulaRecipe>;
}

/** What does not change while somebody types, laid out once for looking up. */
export function readFacts({ bases, materials, reports, decisions, ...rest }: CheckFacts): ReadFacts {
  const byId = new Map(materials.map(({ id, details }) => [id, details]));
  const recipesOf = (which: 'inForce' | 'newest') =>
    new Map(
      bases.map(({ formulaId, name, [which]: lines }) => [
        formulaId,
        { formulaId, name, lines: linesOf(lines) },
      ]),
    );
  return {
    ...rest,
    materials: byId,
    reports: reports.map(({ id, details }) => ({
      row: { id },
      details,
      materialNames: new Map(
        details.ranges.map(({ materialId }) => [materialId, byId.get(materialId)?.name ?? '']),
      ),
    })),
    decisions: decisions.map(({ entryId, key, verdict, reason, upon, by, at }) => ({
      entry_id: entryId,
      unknown_key: key,
      verdict,
      reason,
      upon: JSON.stringify(upon),
      person_name: by,
      happened_at: at,
    })),
    inForce: recipesOf('inForce'),
    newest: recipesOf('newest'),
  };
}

/** What is a trial itself is tried out with the newest of each base, be that a trial too. */
export function lookUp(facts: ReadFacts, draft: FormulaRecipe, standing: RevisionDetails['standing']) {
  const others = standing === 'trial' ? facts.newest : facts.inForce;
  return {
    revision: (id: string) => (id === DRAFT ? draft : undefined),
    base: (id: string) => (id === draft.formulaId ? draft : others.get(id)),
  };
}

/** Lines as the calculation takes them: a formula within a formula is a base. */
export const linesOf = (lines: readonly Line[]): FormulaLine[] =>
  lines.map(({ stage, itemKind, itemId, grams }, index) => ({
    key: String(index),
    stage,
    item: itemKind === 'formula' ? { kind: 'base', formulaId: itemId } : { kind: 'material', id: itemId },
    grams,
  }));
