import { boundSafetyTables } from '../../catalogue/index.ts';
import type { Market } from '../../contract/index.ts';
import type { FormulaLookup } from '../../core/formula/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { type CompositionAnswer, checkComposition } from '../../core/safety/index.ts';
import { listDecisions, type SignedDecision } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { baseAsked, findReport, reportAsked } from './find-report.ts';
import { listUnknowns } from './list-unknowns.ts';
import { type OpenedRevision, openRevision } from './read-composition.ts';
import { type KnownReport, readAllReports } from './report-view.ts';
import { decisionsByKey, standingDecisions } from './unknown-key.ts';

/** One report, or none, with the markets that it is asked for and what came of it. */
export interface CheckedGroup {
  readonly report: KnownReport | undefined;
  readonly markets: readonly Market[];
  readonly answer: CompositionAnswer;
}

export interface Checked {
  readonly opened: OpenedRevision;
  readonly today: string;
  readonly groups: readonly CheckedGroup[];
  /** By the calculation's key of one market. */
  readonly decisions: ReadonlyMap<string, SignedDecision>;
  /** Decisions that no longer count, since what they were taken upon has changed; by the same key. */
  readonly lapsed: ReadonlyMap<string, SignedDecision>;
  /** Everything that was ever decided, by the same key. */
  readonly everDecided: ReadonlyMap<string, readonly SignedDecision[]>;
}

/**
 * A revision against law, IFRA and the assessor's report, for these markets, as if its first unit were supplied today.
 * Markets that different reports cover are asked apart. `weighed`: what really went into a batch, instead of the formula.
 */
export async function runCheck(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
  weighed?: FormulaLookup,
): Promise<Result<Checked>> {
  const { db } = context.storage;
  const opened = await openRevision(db, revisionId, weighed);
  if (!opened.ok) return opened;
  const today = await workshopToday(context);
  const reports = groupByReport(await readAllReports(db), opened.value, markets);
  const everDecided = decisionsByKey(await listDecisions(db, revisionId));
  const judge = (decisions: Checked['decisions'], lapsed: Checked['lapsed'] = new Map()): Checked => ({
    opened: opened.value,
    today,
    groups: reports.map((group) => ({ ...group, answer: askGroup(group, opened.value, today, decisions) })),
    decisions,
    lapsed,
    everDecided,
  });
  const checked = judge(standingDecisions(everDecided));
  // A decision is upon the formula. That a weighing strays a little reopens nothing; the formula itself is asked apart.
  const lapsed = weighed === undefined ? findLapsed(checked) : [];
  if (lapsed.length === 0) return done(checked);
  const gone = new Map(lapsed);
  return done(judge(new Map([...checked.decisions].filter(([key]) => !gone.has(key))), gone));
}

/** Decisions on what is another composition by now. */
const findLapsed = (checked: Checked): (readonly [string, SignedDecision])[] =>
  listUnknowns(checked).flatMap(({ key, digest }) => {
    const decision = checked.decisions.get(key);
    return decision && digestsOf(decision)[key] !== digest ? [[key, decision] as const] : [];
  });

const digestsOf = (decision: SignedDecision): Readonly<Record<string, string>> =>
  JSON.parse(decision.upon) as Record<string, string>;

type Group = Omit<CheckedGroup, 'answer'>;

function groupByReport(
  reports: readonly KnownReport[],
  opened: OpenedRevision,
  markets: readonly Market[],
): Group[] {
  const groups = new Map<string, { report: KnownReport | undefined; markets: Market[] }>();
  for (const market of markets) {
    const report = findReport(reports, opened, market);
    const group = groups.get(report?.row.id ?? '');
    if (group) group.markets.push(market);
    else groups.set(report?.row.id ?? '', { report, markets: [market] });
  }
  return [...groups.values()];
}

function askGroup(
  { report, markets }: Group,
  opened: OpenedRevision,
  today: string,
  decisions: Checked['decisions'],
): CompositionAnswer {
  const { use, category, bodyPart, productType, minAgeMonths } = opened.details;
  const baseId = report && baseAsked(report, opened);
  return checkComposition(boundSafetyTables(), {
    markets,
    use,
    category,
    firstSupplied: today,
    ...(bodyPart !== '' && { bodyPart }),
    ...(productType !== '' && { productType }),
    ...(minAgeMonths !== null && { minAgeMonths }),
    contributions: opened.contributions,
    materials: opened.expanded.materials.map(({ materialId, percent }) => ({
      materialId,
      name: opened.materials.get(materialId)?.name ?? '',
      percent,
    })),
    report: report ? reportAsked(report, opened) : null,
    supplierLimits: supplierLimitsOf(opened),
    ...(baseId !== undefined && { baseId }),
    ...(opened.formula.kind === 'mixture' && { scentId: opened.formula.id }),
    decisions: [...decisions].map(([unknownKey, decision]) => ({
      unknownKey,
      isAccepted: decision.verdict === 'accepted',
      decidedBy: decision.person_name,
      decidedOn: decision.happened_at,
      reason: decision.reason,
    })),
  });
}

/** A supplier's paper speaks of the finished product: a base is diluted before it is sold. */
const supplierLimitsOf = ({ formula, materials }: OpenedRevision) =>
  formula.kind === 'base'
    ? []
    : [...materials].flatMap(([materialId, { supplierMostPercent, supplierPaper }]) =>
        supplierMostPercent === null
          ? []
          : [{ materialId, mostPercent: supplierMostPercent, source: supplierPaper }],
      );
