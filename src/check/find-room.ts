import { boundSafetyTables, ingredientOrder } from '../catalogue/index.ts';
import type { Market } from '../contract/index.ts';
import { nameIngredients, orderIngredients } from '../core/label/index.ts';
import { type Fraction, fractionOf, NOUGHT } from '../core/linear/index.ts';
import { done, type Result } from '../core/problem.ts';
import { findRoomToMove, type RoomAnswer, type RoomLabel, type ScentBound } from '../core/safety/index.ts';
import type { FormulaDraft, ReadFacts } from './check-draft.ts';
import type { OpenedRevision } from './checked.ts';
import { findReport } from './find-report.ts';
import { placesOf } from './judged-places.ts';
import { listIngredients } from './list-ingredients.ts';
import { contentsOf, type OpenedPart, openPart, shareIn } from './open-part.ts';
import { boundsOfReport, boundsOfSuppliers } from './own-bounds.ts';
import { usesOf } from './uses-of.ts';
import type { ScentOnLabel } from './view-check.ts';

export interface FoundRoom extends RoomAnswer {
  readonly percents: readonly Fraction[];
}

/** How far each line of a formula may go up and down, for these markets, as if its first unit were supplied today. */
export function findRoom(
  facts: ReadFacts,
  draft: FormulaDraft,
  markets: readonly Market[],
): Result<FoundRoom> {
  const whole = openPart(facts, draft);
  if (!whole.ok) return whole;
  const parts: OpenedPart[] = [];
  for (const line of draft.lines) {
    const part = openPart(facts, { ...draft, lines: [line] });
    if (!part.ok) return part;
    parts.push(part.value);
  }
  const percents = percentsOf(draft);
  const { opened } = whole.value;
  const answer = findRoomToMove(boundSafetyTables(), {
    parts: parts.map(contentsOf),
    percents,
    places: placesOf(draft, markets, facts.today),
    ownBounds: [...boundsOfSuppliers(opened, parts), ...boundsOfReports(facts, opened, markets, parts)],
    labels: markets.flatMap((market) => labelsOf(facts, opened, market, parts)),
  });
  return done({ ...answer, percents });
}

/** Of a formula that opened, so that its grams can be read. */
function percentsOf({ lines }: FormulaDraft): Fraction[] {
  const grams = lines.map((line) => fractionOf(line.grams));
  const whole = grams.reduce((sum, each) => sum.plus(each), NOUGHT);
  return grams.map((each) => each.times(HUNDRED_PERCENT).over(whole));
}

const HUNDRED_PERCENT = fractionOf(100);

const boundsOfReports = (
  { reports, today, sold: { products } }: ReadFacts,
  whole: OpenedRevision,
  markets: readonly Market[],
  parts: readonly OpenedPart[],
): ScentBound[] =>
  markets.flatMap((market) => {
    const report = findReport(reports, { opened: whole, today, products }, market);
    return (report ? boundsOfReport(report, whole, parts) : []).flatMap(({ most, least }) =>
      [most, ...(least ? [least] : [])].map((bound) => ({ ...bound, about: [market] })),
    );
  });

/** One label for each way in which products list their scent; a formula without products lists it by name. */
function labelsOf(
  { sold, today }: ReadFacts,
  whole: OpenedRevision,
  market: Market,
  parts: readonly OpenedPart[],
): RoomLabel[] {
  const uses = usesOf(whole.details);
  // What stays on the skin in one of its uses is named by the lower threshold in all of them.
  const use = uses.some((each) => each.use === 'leave-on') ? 'leave-on' : 'rinse-off';
  const ways: readonly ScentOnLabel[] = sold.scentOnLabel.length > 0 ? sold.scentOnLabel : ['by-name'];
  return ways.map((way) => ({
    about: market,
    naming: { market, use, firstSupplied: today },
    order: ingredientOrder(market),
    ingredients: listAsPrinted(whole, market, way, parts),
  }));
}

type Listed = RoomLabel['ingredients'][number];

const keyOf = (name: string): string => name.trim().toLowerCase();

/** What stands under one name is one ingredient; what lacks a name cannot be listed, and its label is not complete. */
function listAsPrinted(
  whole: OpenedRevision,
  market: Market,
  way: ScentOnLabel,
  parts: readonly OpenedPart[],
): Listed[] {
  const named = nameIngredients({
    market,
    ingredients: listIngredients(whole, market),
    isScentTogether: way === 'parfum',
  });
  const listed = new Map<string, Listed>();
  for (const [index, { name, role }] of named.entries()) {
    const materialId = whole.expanded.materials[index]?.materialId ?? '';
    const known = listed.get(keyOf(name));
    listed.set(keyOf(name), {
      name: known?.name ?? name,
      isColourant: role === 'colourant' && (known?.isColourant ?? true),
      weights: parts.map((part, place) => shareIn(part, materialId).plus(known?.weights[place] ?? NOUGHT)),
    });
  }
  const lines = named.filter(({ name }) => name.trim() !== '');
  const ordered = lines.length === 0 ? undefined : orderIngredients(lines, [], ingredientOrder(market));
  return ordered?.ok ? ordered.value.list.flatMap((name) => listed.get(keyOf(name)) ?? []) : [];
}
