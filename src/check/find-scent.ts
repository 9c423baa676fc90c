import { boundSafetyTables } from '../catalogue/index.ts';
import type { Market } from '../contract/index.ts';
import { type ExpandedFormula, expandFormula } from '../core/formula/index.ts';
import { type Fraction, fractionOf, NOUGHT } from '../core/linear/index.ts';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { type ExactInput, exact } from '../core/quantity/index.ts';
import {
  findScentInProduct,
  type JudgedPlace,
  type PartContents,
  type ScentAnswer,
  type ScentBound,
  type Share,
  type WeighingErrors,
} from '../core/safety/index.ts';
import { DRAFT, type FormulaDraft, linesOf, lookUp, type ReadFacts } from './check-draft.ts';
import type { OpenedRevision } from './checked.ts';
import { findReport } from './find-report.ts';
import { listSupplierLimits } from './list-supplier-limits.ts';
import { openComposition } from './open-composition.ts';
import { usesOf } from './uses-of.ts';

export interface ScentWish {
  /** Of which lines of the draft, by their place, how much of the scent each may be. */
  readonly oils: readonly { readonly line: number; readonly share: Share }[];
  readonly markets: readonly Market[];
  readonly mostPercent?: ExactInput | undefined;
  readonly errors?: WeighingErrors | undefined;
}

export interface FoundScent extends ScentAnswer {
  /** Oils that the report has no range for: it is held to for the others only. */
  readonly notInReport: readonly string[];
}

/** How much scent a formula may have: its lines that are no oil stay in their proportions and fill it up. */
export function findScent(facts: ReadFacts, draft: FormulaDraft, wish: ScentWish): Result<FoundScent> {
  const opened = openParts(facts, draft, wish);
  if (!opened.ok) return opened;
  const { oils, rest, whole } = opened.value;
  const parts = [...oils, rest];
  const reports = wish.markets.flatMap((market) => findReport(facts.reports, whole, market) ?? []);
  const answer = findScentInProduct(boundSafetyTables(), {
    places: placesOf(draft, wish.markets, facts.today),
    parts: parts.map(contentsOf),
    shares: wish.oils.map(({ share }) => share),
    ownBounds: [...boundsOfSuppliers(whole, parts), ...boundsOfReports([...new Set(reports)], parts)],
    mostPercent: wish.mostPercent,
    errors: wish.errors,
  });
  if (!answer.ok) return answer;
  const known = new Set(reports.flatMap(({ details }) => details.ranges.map(({ materialId }) => materialId)));
  const notInReport = reports.length === 0 ? [] : oils.filter(({ ids }) => ids.some((id) => !known.has(id)));
  return done({ ...answer.value, notInReport: notInReport.map(({ name }) => name) });
}

/** A part of the product by itself: an oil, or everything else. */
interface OpenedPart {
  readonly name: string;
  readonly ids: readonly string[];
  readonly opened: OpenedRevision;
}

function openParts(facts: ReadFacts, draft: FormulaDraft, { oils }: ScentWish) {
  const places = oils.map(({ line }) => line);
  const others = draft.lines.filter((_, index) => !places.includes(index));
  if (others.length === 0) return refused(problem('nothing-but-scent', 'lines'));
  const rest = openPart(facts, { ...draft, lines: others });
  if (!rest.ok) return rest;
  const whole = openPart(facts, draft);
  if (!whole.ok) return whole;
  const opened: OpenedPart[] = [];
  for (const place of places) {
    const line = draft.lines[place];
    if (!line) return refused(problem('line-not-there', 'oils', { found: place + 1 }));
    const oil = openPart(facts, { ...draft, lines: [{ ...line, grams: '100' }] });
    if (!oil.ok) return oil;
    opened.push(oil.value);
  }
  return done({ oils: opened, rest: rest.value, whole: whole.value.opened });
}

function openPart(facts: ReadFacts, { lines, ...details }: FormulaDraft): Result<OpenedPart> {
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

const contentsOf = ({ opened }: OpenedPart): PartContents =>
  opened.contributions.map(({ mostPercent, ...one }) => ({ ...one, percent: mostPercent }));

const placesOf = (draft: FormulaDraft, markets: readonly Market[], date: string): JudgedPlace[] =>
  markets.flatMap((market) =>
    usesOf(draft).map(({ use, category, bodyPart, productType }) => ({
      context: {
        market,
        use,
        category,
        date,
        ...(bodyPart !== '' && { bodyPart }),
        ...(productType !== '' && { productType }),
        ...(draft.minAgeMonths !== null && { minAgeMonths: draft.minAgeMonths }),
      },
      about: market,
    })),
  );

/** How much of a part is this material, as a fraction. */
function shareIn({ opened }: OpenedPart, materialId: string): Fraction {
  const found = opened.expanded.materials.find((one) => one.materialId === materialId);
  return found ? fractionOf(found.percent).over(fractionOf(100)) : NOUGHT;
}

const boundsOfSuppliers = (whole: OpenedRevision, parts: readonly OpenedPart[]): ScentBound[] =>
  listSupplierLimits(whole).map(({ materialId, mostPercent, source }) => ({
    name: whole.materials.get(materialId)?.name ?? '',
    told: { kind: 'supplier', source, citation: source },
    weights: parts.map((part) => shareIn(part, materialId)),
    most: fractionOf(mostPercent),
  }));

type Reports = ReadFacts['reports'];

/** Of every material that it has a range for the most; of the rest also the least, since scent takes its room. */
const boundsOfReports = (reports: Reports, parts: readonly OpenedPart[]): ScentBound[] =>
  reports.flatMap(({ details, materialNames }) =>
    details.ranges.flatMap(({ materialId, leastPercent, mostPercent }): ScentBound[] => {
      const bound = {
        name: materialNames.get(materialId) ?? '',
        told: { kind: 'assessor', source: details.reference, citation: details.reference } as const,
        weights: parts.map((part) => shareIn(part, materialId)),
      };
      const isInRest = (bound.weights.at(-1)?.sign ?? 0) > 0;
      return [
        { ...bound, most: fractionOf(mostPercent) },
        ...(isInRest && exact(leastPercent).gt(0) ? [atLeast(bound, leastPercent)] : []),
      ];
    }),
  );

/** At least so much is at most so much of its negative. */
const atLeast = (bound: Omit<ScentBound, 'most'>, percent: ExactInput): ScentBound => ({
  ...bound,
  weights: bound.weights.map((weight) => weight.negated()),
  most: fractionOf(percent).negated(),
});
