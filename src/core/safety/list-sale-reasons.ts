import type {
  CheckedVerdict,
  MarketCheck,
  ReasonKind,
  SaleReason,
  UnknownDecision,
} from './composition-check.ts';
import type { ReportAnswer, ReportWord } from './judge-report.ts';
import type { SupplierVerdict } from './judge-supplier-limits.ts';
import type { Market } from './safety-table-rows.ts';

interface Checked {
  readonly markets: readonly MarketCheck[];
  readonly supplier: readonly SupplierVerdict[];
  readonly report: ReportAnswer | undefined;
  readonly isReportMissing: boolean;
}

/** An unknown that a named person accepted no longer blocks; it is still told. */
function blocksBy(decision: UnknownDecision | undefined): SaleReason['blocks'] {
  if (decision === undefined) return 'until-decided';
  return decision.isAccepted ? 'no' : 'yes';
}

function reasonOfVerdict(market: Market, verdict: CheckedVerdict): SaleReason | undefined {
  const { name: substance, ruleId: rule, unknownKey } = verdict;
  if (verdict.verdict === 'over' || verdict.verdict === 'prohibited') {
    return { kind: verdict.verdict, blocks: 'yes', market, substance, rule };
  }
  if (verdict.verdict !== 'unknown') return undefined;
  const blocks = blocksBy(verdict.decision);
  return {
    kind: blocks === 'yes' ? 'unknown-refused' : 'unknown',
    blocks,
    market,
    substance,
    rule,
    unknownKey,
  };
}

function reasonsOfMarket({ market, verdicts, naming }: MarketCheck): SaleReason[] {
  const reasons: SaleReason[] = [];
  for (const verdict of verdicts) {
    const reason = reasonOfVerdict(market, verdict);
    if (reason !== undefined) reasons.push(reason);
  }
  for (const { name: substance, unknownKey, decision } of naming.unknown) {
    const blocks = blocksBy(decision);
    const kind = blocks === 'yes' ? 'name-unknown-refused' : 'name-unknown';
    reasons.push({ kind, blocks, market, substance, unknownKey });
  }
  return reasons;
}

const KIND_OF_REPORT: Readonly<Record<Exclude<ReportWord, 'within'>, ReasonKind>> = {
  over: 'report-over',
  below: 'report-below',
  'not-covered': 'report-not-covered',
};

function reasonsOfReport(report: ReportAnswer): SaleReason[] {
  const materials = report.materials.flatMap(({ name, verdict }): SaleReason[] =>
    verdict === 'within' ? [] : [{ kind: KIND_OF_REPORT[verdict], blocks: 'yes', substance: name }],
  );
  const rule = report.reference;
  const other: SaleReason[] = [
    ...(report.coversBase ? [] : [{ kind: 'report-base-not-covered', blocks: 'yes', rule } as const]),
    ...(report.coversScent ? [] : [{ kind: 'report-scent-not-covered', blocks: 'yes', rule } as const]),
    ...(report.review === 'passed' ? [{ kind: 'report-review-passed', blocks: 'yes', rule } as const] : []),
    ...(report.review === 'close' ? [{ kind: 'report-review-close', blocks: 'no', rule } as const] : []),
  ];
  return [...materials, ...other];
}

export function listSaleReasons({ markets, supplier, report, isReportMissing }: Checked): SaleReason[] {
  return [
    ...markets.flatMap(reasonsOfMarket),
    ...supplier
      .filter(({ verdict }) => verdict === 'over')
      .map(
        ({ name, source }): SaleReason => ({
          kind: 'supplier-over',
          blocks: 'yes',
          substance: name,
          rule: source,
        }),
      ),
    ...(isReportMissing ? [{ kind: 'report-missing', blocks: 'yes' } as const] : []),
    ...(report === undefined ? [] : reasonsOfReport(report)),
  ];
}
