import type { Saying } from '../contract/index.ts';
import { saying } from '../contract/index.ts';
import { exact, toText } from '../core/quantity/index.ts';
import type { CheckedVerdict, ReasonKind, SaleReason } from '../core/safety/index.ts';
import { cutPercent } from '../words/index.ts';
import type { AskedProduct, Checked, CheckedGroup } from './checked.ts';
import { isNamed } from './find-report.ts';
import { listQuestions, type OpenQuestion } from './list-questions.ts';
import { sayUse } from './say-use.ts';

export interface ToldReason {
  readonly blocks: SaleReason['blocks'];
  readonly says: Saying;
}

const CODES: Readonly<Record<ReasonKind, string>> = {
  prohibited: 'sale-prohibited',
  over: 'sale-over',
  unknown: 'sale-unknown',
  'unknown-refused': 'sale-unknown-refused',
  'name-unknown': 'sale-unknown',
  'name-unknown-refused': 'sale-unknown-refused',
  'supplier-over': 'sale-supplier-over',
  'report-missing': 'sale-report-missing',
  'report-over': 'sale-report-over',
  'report-below': 'sale-report-below',
  'report-not-covered': 'sale-report-not-covered',
  'report-base-not-covered': 'sale-report-base-not-covered',
  'report-scent-not-covered': 'sale-report-scent-not-covered',
  'report-review-passed': 'sale-report-review-passed',
  'report-review-close': 'sale-report-review-close',
};

const ABOUT_UNKNOWNS: ReadonlySet<ReasonKind> = new Set([
  'unknown',
  'unknown-refused',
  'name-unknown',
  'name-unknown-refused',
]);

const RANK = { yes: 0, 'until-decided': 1, no: 2 } as const;

/** What stands between the revision and its sale, what stops it first; unknowns as questions, once for all markets. */
export function listReasons(checked: Checked): ToldReason[] {
  const told = [
    ...checked.groups.flatMap((group) => ofGroup(group, checked.products)),
    ...ofQuestions(checked),
  ];
  const merged = new Map<string, { readonly reason: ToldReason; readonly markets: string[] }>();
  for (const { reason, market } of told) {
    const key = JSON.stringify([reason.blocks, reason.says]);
    const known = merged.get(key);
    if (!known) merged.set(key, { reason, markets: [market] });
    else if (!known.markets.includes(market)) known.markets.push(market);
  }
  return [...merged.values()]
    .map(({ reason, markets }) => ({
      ...reason,
      says: { ...reason.says, parameters: { ...reason.says.parameters, markets: markets.join(', ') } },
    }))
    .sort((one, other) => RANK[one.blocks] - RANK[other.blocks]);
}

interface InMarket {
  readonly reason: ToldReason;
  readonly market: string;
}

const ofGroup = (group: CheckedGroup, products: readonly AskedProduct[]): InMarket[] => [
  ...ofReasons(group, products),
  ...ofUnnamed(group, products),
];

/** It holds for the products that the report names, and for these others it does not. */
const ofUnnamed = ({ report, markets }: CheckedGroup, products: readonly AskedProduct[]): InMarket[] =>
  products
    .filter((product) => report && !isNamed(report.details, product))
    .map(({ name }) => ({
      reason: {
        blocks: 'no',
        says: saying('sale-report-leaves-product', {
          product: name,
          report: report?.details.reference ?? '',
        }),
      },
      market: markets.join(', '),
    }));

const ofReasons = (group: CheckedGroup, products: readonly AskedProduct[]): InMarket[] =>
  group.answer.reasons
    .filter((reason) => !ABOUT_UNKNOWNS.has(reason.kind))
    .map((reason) => ({
      reason: { blocks: reason.blocks, says: sayReason(reason, group, products) },
      market: reason.market ?? group.markets.join(', '),
    }));

const sayReason = (reason: SaleReason, group: CheckedGroup, products: readonly AskedProduct[]): Saying =>
  reason.kind === 'report-missing' && group.ofOthers
    ? saying('sale-report-of-others', {
        report: group.ofOthers.details.reference,
        products: products.map(({ name }) => name).join(', '),
      })
    : saying(codeOf(reason, group), wordsOf(reason, group));

/** A peroxide value is over by another measure than a share of the product. */
const codeOf = (reason: SaleReason, group: CheckedGroup): string =>
  reason.kind === 'over' && findVerdict(reason, group)?.limitUnit === 'mmol-per-litre'
    ? 'sale-peroxide-over'
    : CODES[reason.kind];

function findVerdict({ kind, market, substance, rule }: SaleReason, { answer }: CheckedGroup) {
  const verdicts = answer.markets.find((row) => row.market === market)?.verdicts ?? [];
  const ofRule = verdicts.filter((row) => row.name === substance && row.ruleId === rule);
  return ofRule.find(({ verdict }) => verdict === kind) ?? ofRule[0];
}

const ofQuestions = (checked: Checked): InMarket[] =>
  listQuestions(checked).map((question) => ({
    reason: reasonOfQuestion(question),
    market: question.markets.join(', '),
  }));

function reasonOfQuestion({ substance, what, decided, lapsed }: OpenQuestion): ToldReason {
  if (decided !== null) {
    const isRefused = decided.verdict === 'refused';
    const code = isRefused ? 'sale-unknown-refused' : 'sale-unknown-accepted';
    return { blocks: isRefused ? 'yes' : 'no', says: saying(code, { substance, by: decided.by }) };
  }
  const says =
    lapsed === null
      ? saying('sale-unknown', { substance, what, by: '' })
      : saying('sale-unknown-lapsed', { substance, what, by: lapsed.by, on: lapsed.at });
  return { blocks: 'until-decided', says };
}

function wordsOf(reason: SaleReason, group: CheckedGroup): Saying['parameters'] {
  const { substance = '' } = reason;
  const verdict = findVerdict(reason, group);
  if (verdict) return wordsOfVerdict(substance, verdict);
  if (reason.kind === 'supplier-over') return wordsOfSupplier(reason, group);
  const row = group.answer.report?.materials.find((material) => material.name === substance);
  return {
    substance,
    percent: text(row?.percent, row?.leastPercent, row?.mostPercent),
    leastPercent: boundText(row?.leastPercent),
    mostPercent: boundText(row?.mostPercent),
    report: group.report?.details.reference ?? '',
    reviewBy: group.report?.details.reviewBy ?? null,
    rule: reason.rule ?? '',
  };
}

function wordsOfSupplier({ substance = '', rule = '' }: SaleReason, group: CheckedGroup) {
  const row = group.answer.supplier.find((verdict) => verdict.name === substance && verdict.source === rule);
  return {
    substance,
    percent: text(row?.percent, row?.limitPercent),
    limitPercent: boundText(row?.limitPercent),
    rule,
  };
}

const wordsOfVerdict = (substance: string, verdict: CheckedVerdict): Saying['parameters'] => ({
  substance,
  percent: text(verdict.percent, verdict.limitPercent),
  limitPercent: boundText(verdict.limitPercent),
  rule: verdict.citation ?? verdict.source ?? '',
  hasUse: verdict.forUse !== undefined,
  use: verdict.forUse ? sayUse(verdict.forUse) : '',
  value: verdict.foundValue ?? '',
  limitValue: String(verdict.limitValue ?? ''),
  isBelow: verdict.isStrict ?? false,
  lots: (verdict.ofLots ?? []).join(', '),
});

const boundText = (value: number | undefined): string => (value === undefined ? '' : toText(exact(value)));

function text(value: number | undefined, ...bounds: readonly (number | undefined)[]): string {
  if (value === undefined) return '';
  return cutPercent(
    value,
    bounds.map((bound) => bound ?? null),
  );
}
