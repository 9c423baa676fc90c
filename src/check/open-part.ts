import { type ExpandedFormula, expandFormula } from '../core/formula/index.ts';
import { Fraction, NOUGHT } from '../core/linear/index.ts';
import { done, type Result } from '../core/problem.ts';
import type { PartContents } from '../core/safety/index.ts';
import { DRAFT, type FormulaDraft, linesOf, lookUp, type ReadFacts } from './check-draft.ts';
import type { OpenedRevision } from './checked.ts';
import { openComposition } from './open-composition.ts';

/** A part of a product by itself: one line, or several together. */
export interface OpenedPart {
  readonly name: string;
  readonly ids: readonly string[];
  readonly opened: OpenedRevision;
}

export function openPart(facts: ReadFacts, { lines, ...details }: FormulaDraft): Result<OpenedPart> {
  const { formula, revision } = facts;
  const recipe = { formulaId: formula.id, name: formula.name, lines: linesOf(lines) };
  const expanded = expandFormula(DRAFT, lookUp(facts, recipe, details.standing));
  if (!expanded.ok) return expanded;
  const opened = openComposition({
    revision,
    details,
    formula,
    baseIds: lines.filter((line) => line.itemKind === 'formula').map((line) => line.itemId),
    expanded: expanded.value,
    materials: materialsOf(facts, expanded.value),
  });
  if (!opened.ok) return opened;
  const ids = expanded.value.materials.map(({ materialId }) => materialId);
  return done({ name: facts.materials.get(ids[0] ?? '')?.name ?? '', ids, opened: opened.value });
}

const materialsOf = (facts: ReadFacts, { materials }: ExpandedFormula) =>
  new Map(
    materials.flatMap(({ materialId }) => {
      const material = facts.materials.get(materialId);
      return material ? [[materialId, material] as const] : [];
    }),
  );

/** What it brings in, at the most. */
export const contentsOf = ({ opened }: OpenedPart): PartContents =>
  opened.contributions.map(({ mostPercent, ...one }) => ({ ...one, percent: mostPercent }));

/** How much of a part is this material, as a fraction. */
export function shareIn({ opened }: OpenedPart, materialId: string): Fraction {
  const found = opened.expanded.materials.find((one) => one.materialId === materialId);
  return found ? new Fraction(found.parts, opened.expanded.whole) : NOUGHT;
}
