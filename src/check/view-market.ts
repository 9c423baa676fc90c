import type { z } from 'zod';
import type { formulas } from '../contract/index.ts';
import { exact, toText } from '../core/quantity/index.ts';
import type { CheckedVerdict, MarketCheck, SupplierVerdict } from '../core/safety/index.ts';
import { say } from '../words/index.ts';
import type { OpenQuestion } from './list-questions.ts';
import { whyUnknown } from './list-unknowns.ts';
import { sayUse } from './say-use.ts';
import { marketKeysOf } from './unknown-key.ts';

type MarketView = z.output<typeof formulas.revisionCheck>['markets'][number];
type VerdictView = MarketView['verdicts'][number];

export const text = (value: number): string => toText(exact(value));
export const textOrNull = (value: number | undefined): string | null =>
  value === undefined ? null : text(value);

/** By the key of an unknown in one market: the question that it is asked in. */
export const questionsByUnknown = (questions: readonly OpenQuestion[]): ReadonlyMap<string, string> =>
  new Map(questions.flatMap(({ key }) => marketKeysOf(key).map((one) => [one, key] as const)));

export const viewMarket = (
  { market, verdicts, sumOfShares, naming }: MarketCheck,
  supplier: readonly SupplierVerdict[],
  questions: ReadonlyMap<string, string>,
): Omit<MarketView, 'answer' | 'sentence' | 'notes'> => ({
  market,

  verdicts: [...viewVerdicts(verdicts, questions), ...supplier.map(viewSupplierVerdict)],
  sumOfShares: sumOfShares ?? null,
  named: naming.named.map((row) => ({
    labelName: row.labelName,
    percent: text(row.percent),
    thresholdPercent: text(row.thresholdPercent),
    entry: String(row.entry),
    members: [...row.members],
  })),
});

/** What a rule asks of the lot's certificate stands with the limit of the same rule, where it has one. */
function viewVerdicts(
  verdicts: readonly CheckedVerdict[],
  questions: ReadonlyMap<string, string>,
): VerdictView[] {
  const limits = verdicts.filter((row) => !isCertificate(row));
  const certificates = verdicts.filter(isCertificate);
  const alone = certificates.filter((row) => !limits.some((limit) => isOneRule(limit, row)));
  return [...limits, ...alone].map((row) => ({
    ...viewVerdict(row, questions),
    certificates: certificates
      .filter((other) => other !== row && !alone.includes(other) && isOneRule(row, other))
      .map((other) => ({ reason: say(whyUnknown(other)), question: questionOf(other, questions) ?? '' })),
  }));
}

const isCertificate = ({ reason }: CheckedVerdict): boolean => reason === 'needs-certificate';

const isOneRule = (one: CheckedVerdict, other: CheckedVerdict): boolean =>
  one.kind === other.kind && one.name === other.name && one.source === other.source;

const questionOf = ({ unknownKey }: CheckedVerdict, questions: ReadonlyMap<string, string>): string | null =>
  unknownKey === undefined ? null : (questions.get(unknownKey) ?? null);

const viewVerdict = (
  row: CheckedVerdict,
  questions: ReadonlyMap<string, string>,
): Omit<VerdictView, 'certificates'> => ({
  name: row.name,
  verdict: row.verdict,
  typicalPercent: text(row.typicalPercent ?? row.percent),
  mostPercent: text(row.percent),
  limitPercent: textOrNull(row.limitPercent),
  kind: row.kind ?? null,
  entry: row.entry ?? null,
  edition: row.edition ?? null,
  source: row.source ?? null,
  confidence: weakest(row.confidence, row.amountConfidence),
  fromMaterials: [...(row.fromMaterials ?? [])],
  forUse: row.forUse ? sayUse(row.forUse) : null,
  reason: row.verdict === 'unknown' ? say(whyUnknown(row)) : null,
  question: questionOf(row, questions),
});

/** What a supplier allows does not differ by market, and stands with each market's limits all the same. */
const viewSupplierVerdict = (row: SupplierVerdict): VerdictView => ({
  name: row.name,
  verdict: row.verdict,
  typicalPercent: text(row.percent),
  mostPercent: text(row.percent),
  limitPercent: text(row.limitPercent),
  kind: 'supplier',
  entry: null,
  edition: null,
  source: row.source,
  confidence: 'supplier',
  fromMaterials: [row.name],
  forUse: null,
  reason: null,
  question: null,
  certificates: [],
});

/** Strongest first (as contract/fields ranks them). A verdict is as strong as the weaker of rule and amount. */
const CONFIDENCES = ['report', 'supplier', 'read', 'read-secondary', 'computed', 'derived', 'memory'];

function weakest(...words: readonly (string | undefined)[]): string | null {
  const ranks = words.filter((word) => word !== undefined).map((word) => CONFIDENCES.indexOf(word));
  return ranks.length === 0 ? null : (CONFIDENCES[Math.max(...ranks)] ?? null);
}
