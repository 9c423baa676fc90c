import { boundSafetyTables } from '../catalogue/index.ts';
import type { formulas, Market } from '../contract/index.ts';
import {
  type CompositionAnswer,
  checkComposition,
  type ProductKind,
  type RawMaterialFigures,
} from '../core/safety/index.ts';
import type {
  AskedProduct,
  Checked,
  CheckedGroup,
  KnownReport,
  MaterialKind,
  OpenedRevision,
  SignedDecision,
} from './checked.ts';
import { baseAsked, findReport, type ReportQuestion, reportAsked } from './find-report.ts';
import { listFunctions } from './list-functions.ts';
import { listSupplierLimits } from './list-supplier-limits.ts';
import { listUnknowns } from './list-unknowns.ts';
import { decisionsByKey, standingDecisions } from './unknown-key.ts';
import { usesOf } from './uses-of.ts';

export interface FormulaQuestion {
  readonly opened: OpenedRevision;
  readonly markets: readonly Market[];
  /** The day on which its first unit is taken to be supplied. */
  readonly today: string;
  readonly reports: readonly KnownReport[];
  /** Every decision on the revision, the earliest first. */
  readonly decisions: readonly SignedDecision[];
  /** Products that it is judged for: a report that names products covers no other. */
  readonly products?: readonly AskedProduct[];
  /** What really went into a batch is judged, not the formula. */
  readonly isWeighed?: boolean;
}

/**
 * A formula against law, IFRA and the assessor's report, for these markets. Markets that different reports cover are
 * asked apart.
 */
export function judgeFormula(question: FormulaQuestion): Checked {
  const { opened, today, products = [], isWeighed = false } = question;
  const reports = groupByReport(question.reports, { opened, today, products }, question.markets);
  const everDecided = decisionsByKey(question.decisions);
  const judge = (decisions: Checked['decisions'], lapsed: Checked['lapsed'] = new Map()): Checked => ({
    opened,
    products,
    today,
    groups: reports.map((group) => ({ ...group, answer: askGroup(group, opened, today, decisions) })),
    decisions,
    lapsed,
    everDecided,
  });
  const checked = judge(standingDecisions(everDecided));
  // A decision is upon the formula. That a weighing strays a little reopens nothing; the formula itself is asked apart.
  const lapsed = isWeighed ? [] : findLapsed(checked);
  if (lapsed.length === 0) return checked;
  const gone = new Map(lapsed);
  return judge(new Map([...checked.decisions].filter(([key]) => !gone.has(key))), gone);
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
  asked: ReportQuestion,
  markets: readonly Market[],
): Group[] {
  const groups = new Map<string, { found: Pick<Group, 'report' | 'ofOthers'>; markets: Market[] }>();
  for (const market of markets) {
    const report = findReport(reports, asked, market);
    const ofOthers = report ? undefined : findReport(reports, { ...asked, products: [] }, market);
    const key = report?.row.id ?? `not ${ofOthers?.row.id ?? ''}`;
    const group = groups.get(key);
    if (group) group.markets.push(market);
    else groups.set(key, { found: { report, ofOthers }, markets: [market] });
  }
  return [...groups.values()].map(({ found, markets }) => ({ ...found, markets }));
}

function askGroup(
  { report, markets }: Group,
  opened: OpenedRevision,
  today: string,
  decisions: Checked['decisions'],
): CompositionAnswer {
  const { minAgeMonths } = opened.details;
  const [own, ...others] = usesOf(opened.details).map(kindOfUse);
  if (own === undefined) throw new Error('a product has a use');
  const baseId = report && baseAsked(report, opened);
  return checkComposition(boundSafetyTables(), {
    markets,
    ...own,
    ...(others.length > 0 && { alsoUsedAs: others }),
    firstSupplied: today,
    ...(minAgeMonths !== null && { minAgeMonths }),
    contributions: opened.contributions,
    materials: opened.expanded.materials.map(({ materialId, percent }) => ({
      materialId,
      name: opened.materials.get(materialId)?.name ?? '',
      percent,
    })),
    report: report ? reportAsked(report, opened) : null,
    functions: listFunctions(opened),
    supplierLimits: listSupplierLimits(opened),
    ...(opened.kinds.some(({ lot }) => lot !== null) && { rawMaterials: opened.kinds.map(figuresOf) }),
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

const kindOfUse = ({ use, category, bodyPart, productType }: formulas.ProductUse): ProductKind => ({
  use,
  category,
  ...(bodyPart !== '' && { bodyPart }),
  ...(productType !== '' && { productType }),
});

const figuresOf = ({ details, lot }: MaterialKind): RawMaterialFigures => {
  const peroxide = lot?.details.peroxide?.mmolPerLitre;
  return {
    name: details.name,
    ...(lot && { lot: lot.lotNumber }),
    ...(peroxide !== undefined && { peroxideMmolPerLitre: peroxide }),
  };
};
