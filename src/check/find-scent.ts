import { boundSafetyTables } from '../catalogue/index.ts';
import type { Market } from '../contract/index.ts';
import { done, problem, type Result, refused } from '../core/problem.ts';
import type { ExactInput } from '../core/quantity/index.ts';
import {
  findScentInProduct,
  type ScentAnswer,
  type ScentBound,
  type Share,
  type WeighingErrors,
} from '../core/safety/index.ts';
import type { FormulaDraft, ReadFacts } from './check-draft.ts';
import { findReport } from './find-report.ts';
import { placesOf } from './judged-places.ts';
import { contentsOf, type OpenedPart, openPart } from './open-part.ts';
import { boundsOfReport, boundsOfSuppliers } from './own-bounds.ts';

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
  const asked = { opened: whole, today: facts.today, products: facts.sold.products };
  const reports = [
    ...new Set(wish.markets.flatMap((market) => findReport(facts.reports, asked, market) ?? [])),
  ];
  const answer = findScentInProduct(boundSafetyTables(), {
    places: placesOf(draft, wish.markets, facts.today),
    parts: parts.map(contentsOf),
    shares: wish.oils.map(({ share }) => share),
    ownBounds: [
      ...boundsOfSuppliers(whole, parts),
      ...reports.flatMap((report) =>
        boundsOfReport(report, whole, parts).flatMap(({ most, least }) => [most, ...ofRest(least)]),
      ),
    ],
    mostPercent: wish.mostPercent,
    errors: wish.errors,
  });
  if (!answer.ok) return answer;
  const known = new Set(reports.flatMap(({ details }) => details.ranges.map(({ materialId }) => materialId)));
  const notInReport = reports.length === 0 ? [] : oils.filter(({ ids }) => ids.some((id) => !known.has(id)));
  return done({ ...answer.value, notInReport: notInReport.map(({ name }) => name) });
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

/** Of what stands in the rest also the least counts, since scent takes its room. */
const ofRest = (least: ScentBound | undefined): ScentBound[] =>
  least && (least.weights.at(-1)?.sign ?? 0) < 0 ? [least] : [];
