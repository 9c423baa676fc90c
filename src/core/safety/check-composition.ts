import { type Composition, composeContributions } from './compose.ts';
import type {
  CheckedNamingUnknown,
  CheckedVerdict,
  CompositionAnswer,
  CompositionQuestion,
  MarketCheck,
  RangedContribution,
  UnknownDecision,
} from './composition-check.ts';
import { judgeIfra, tellStandard } from './judge-ifra.ts';
import { judgeReport } from './judge-report.ts';
import { judgeSupplierLimits } from './judge-supplier-limits.ts';
import { asUsed, type JudgedUse, judgeUses } from './judge-uses.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import { listSaleReasons } from './list-sale-reasons.ts';
import { possibleRows } from './match.ts';
import { matchRows } from './match-rows.ts';
import {
  entriesWithDuty,
  type NamingContext,
  type NamingUnknown,
  nameComposition,
} from './name-allergens.ts';
import { planLimits, tellRule } from './plan-limits.ts';
import { normaliseName } from './read-name.ts';
import type { Market, RestrictionRow, Use } from './safety-table-rows.ts';
import type { SafetyTables } from './safety-tables.ts';
import type { ProductKind } from './situations.ts';
import { numbersOfSubstance } from './substance.ts';

/**
 * Looks up what a named person decided; an unknown has the same key in every check of its revision. Object.assign, not
 * spread, here and below: see tellVerdict.
 */
class Decisions {
  readonly #byKey: ReadonlyMap<string, UnknownDecision>;

  constructor(decisions: readonly UnknownDecision[] = []) {
    this.#byKey = new Map(decisions.map((decision) => [decision.unknownKey, decision]));
  }

  onVerdict(market: Market, verdict: LimitVerdict): CheckedVerdict {
    if (verdict.verdict !== 'unknown') return verdict;
    const numbers = (verdict.numbers ?? []).join('+');
    const what = verdict.ruleId ?? `${normaliseName(verdict.name)}:${numbers}`;
    return Object.assign(
      {},
      verdict,
      this.#decisionOn(`${market}:${verdict.kind}:${what}:${verdict.reason}`),
    );
  }

  onNaming(market: Market, unknown: NamingUnknown): CheckedNamingUnknown {
    const key = `${market}:naming:${normaliseName(unknown.name)}:${(unknown.numbers ?? []).join('+')}:${unknown.reason}`;
    return { ...unknown, ...this.#decisionOn(key) };
  }

  #decisionOn(unknownKey: string): { readonly unknownKey: string; readonly decision?: UnknownDecision } {
    const decision = this.#byKey.get(unknownKey);
    return decision === undefined ? { unknownKey } : { unknownKey, decision };
  }
}

/** A substance whose most is not known cannot be within anything that has a rule. */
function amountNotKnown(
  tables: SafetyTables,
  market: Market,
  substance: RangedContribution,
  warningOf: (row: RestrictionRow) => string | undefined,
): LimitVerdict[] {
  const { name, confidence, fromMaterials } = substance;
  const numbers = numbersOfSubstance(substance);
  const told = { name, percent: 0, members: [name], numbers, amountConfidence: confidence, fromMaterials };
  const { restrictions, ifra } = matchRows(tables, substance);
  const inLaw = possibleRows(restrictions).filter(({ rules }) =>
    rules.some(({ markets }) => markets.includes(market)),
  );
  const inIfra = possibleRows(ifra);
  const verdicts = [
    ...inLaw.map((row) => {
      const { citation } = tellRule(row, undefined);
      const warning = warningOf(row);
      const label = warning === undefined ? {} : { warning };
      return { ...told, kind: 'law', ruleId: row.id, source: row.name, citation, ...label } as const;
    }),
    ...inIfra.map((row) => {
      const { citation } = tellStandard(row);
      return { ...told, kind: 'ifra', ruleId: row.id, source: row.name, citation } as const;
    }),
  ];
  if (verdicts.length === 0) return [{ ...told, verdict: 'no-rule' }];
  return verdicts.map((verdict) => ({ ...verdict, verdict: 'unknown', reason: 'amount-not-known' }));
}

function nameNotKnown(
  tables: SafetyTables,
  context: NamingContext,
  contribution: RangedContribution,
): NamingUnknown[] {
  const entries = entriesWithDuty(tables, contribution, context);
  if (entries.length === 0) return [];
  return [
    {
      name: contribution.name,
      percent: 0,
      numbers: numbersOfSubstance(contribution),
      reason: 'amount-not-known',
      mayBe: entries.map(({ labelName }) => labelName),
      tellApartBy: [],
    },
  ];
}

/** What all markets have in common: read, matched and judged by the Standards once. */
interface ReadComposition {
  readonly composition: Composition;
  readonly uses: readonly JudgedUse[];
  readonly withoutMost: readonly RangedContribution[];
  readonly decisions: Decisions;
}

function readComposition(tables: SafetyTables, question: CompositionQuestion): ReadComposition {
  const { rawMaterials = [] } = question;
  const known = question.contributions.filter(({ mostPercent }) => mostPercent !== undefined);
  // Filtered just above; the most decides.
  const composition = composeContributions(tables, known, ({ mostPercent = 100 }) => mostPercent);
  return {
    composition,
    uses: usesOf(question).map((kind) => ({ kind, ifra: judgeIfra({ ...kind, rawMaterials }, composition) })),
    withoutMost: question.contributions.filter(({ mostPercent }) => mostPercent === undefined),
    decisions: new Decisions(question.decisions),
  };
}

const usesOf = ({
  use,
  category,
  bodyPart,
  productType,
  alsoUsedAs = [],
}: CompositionQuestion): ProductKind[] => [
  {
    use,
    category,
    ...(bodyPart !== undefined && { bodyPart }),
    ...(productType !== undefined && { productType }),
  },
  ...alsoUsedAs,
];

/** What stays on the skin in one of its uses is named by the lower threshold in all of them: there is one label. */
const strictestUse = (uses: readonly JudgedUse[]): Use =>
  uses.some(({ kind }) => kind.use === 'leave-on') ? 'leave-on' : 'rinse-off';

function checkMarket(
  tables: SafetyTables,
  question: CompositionQuestion,
  market: Market,
  { composition, uses, withoutMost, decisions }: ReadComposition,
): MarketCheck {
  const context = Object.assign({}, question, { market, date: question.firstSupplied });
  const naming = nameComposition(Object.assign({}, context, { use: strictestUse(uses) }), composition);
  const { verdicts, ...limits } = judgeUses(tables, context, composition, uses);
  const warningOf = (row: RestrictionRow) =>
    uses
      .map(
        ({ kind }) => planLimits(row, { ...asUsed(context, kind), hasNitrosatingAgent: true }).told.warning,
      )
      .find((warning) => warning !== undefined);
  const unmeasured = withoutMost.flatMap((contribution) =>
    amountNotKnown(tables, market, contribution, warningOf),
  );
  const unnamed = withoutMost.flatMap((contribution) => nameNotKnown(tables, context, contribution));
  return {
    market,
    verdicts: [...verdicts, ...unmeasured].map((verdict) => decisions.onVerdict(market, verdict)),
    ...limits,
    naming: {
      ...naming,
      unknown: [...naming.unknown, ...unnamed].map((unknown) => decisions.onNaming(market, unknown)),
    },
  };
}

function checkReport(question: CompositionQuestion): CompositionAnswer['report'] {
  const { report, materials = [], baseId, scentId, firstSupplied } = question;
  if (report === undefined || report === null) return undefined;
  return judgeReport({
    report,
    materials,
    date: firstSupplied,
    ...(baseId !== undefined && { baseId }),
    ...(scentId !== undefined && { scentId }),
  });
}

/**
 * One full check of a formula revision: what must be named, what lies within law and Standards for each market, the
 * suppliers' limits and the assessor's report. Judged on the most that the materials may bring in; the typical stands
 * beside. The tightest of law, IFRA, supplier and report decides; an unknown passes only by a named person's decision.
 */
export function checkComposition(tables: SafetyTables, question: CompositionQuestion): CompositionAnswer {
  const read = readComposition(tables, question);
  const markets = question.markets.map((market) => checkMarket(tables, question, market, read));
  const report = checkReport(question);
  const supplier = judgeSupplierLimits(question.materials ?? [], question.supplierLimits ?? []);
  const reasons = listSaleReasons({ markets, supplier, report, isReportMissing: question.report === null });
  const blocks = new Set(reasons.map((reason) => reason.blocks));
  return {
    markets,
    ...(report !== undefined && { report }),
    supplier,
    mayMakeForSale: blocks.has('yes') ? 'no' : blocks.has('until-decided') ? 'decide' : 'yes',
    reasons,
  };
}
