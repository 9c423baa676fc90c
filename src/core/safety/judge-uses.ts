import type { Composition } from './compose.ts';
import type { IfraAnswer } from './judge-ifra.ts';
import { judgeMarket, type LimitsAnswer, type LimitsContext, tellDecidedBy } from './judge-limits.ts';
import type { LimitVerdict, VerdictWord } from './limit-verdict.ts';
import type { SafetyTables } from './safety-tables.ts';
import type { ProductKind } from './situations.ts';

/** One use of a product, with what the Standards say of it. */
export interface JudgedUse {
  readonly kind: ProductKind;
  readonly ifra: IfraAnswer;
}

/** What is not known goes before what is within: nothing is within that one of the uses leaves open. */
const RANK: Readonly<Record<VerdictWord, number>> = {
  prohibited: 4,
  over: 3,
  unknown: 2,
  within: 1,
  'no-rule': 0,
};

/** Compared by multiplying: amount / limit of the one > amount / limit of the other. No limit is the widest. */
function isTighter(one: LimitVerdict, other: LimitVerdict): boolean {
  if (one.verdict !== other.verdict) return RANK[one.verdict] > RANK[other.verdict];
  if (one.limitPercent === undefined) return false;
  return (
    other.limitPercent === undefined || one.percent * other.limitPercent > other.percent * one.limitPercent
  );
}

/** What is judged: one row of law or Standards, one thing counted. */
const subjectOf = ({ kind, name, source, asWhat, limitUnit }: LimitVerdict): string =>
  [kind, name, source, asWhat, limitUnit].join('|');

/** What the label has to say of one use it says, whichever use has the tighter limit. */
const withWarning = (verdict: LimitVerdict, other: LimitVerdict | undefined): LimitVerdict =>
  verdict.warning === undefined && other?.warning !== undefined
    ? Object.assign({}, verdict, { warning: other.warning })
    : verdict;

interface Tightest {
  readonly verdict: LimitVerdict;
  readonly kind: ProductKind;
  /** In how many of the uses it is judged just so. */
  readonly alike: number;
}

const isAlike = (one: LimitVerdict, other: LimitVerdict): boolean =>
  one.verdict === other.verdict && one.limitPercent === other.limitPercent && one.reason === other.reason;

function tightestBySubject(answers: readonly { kind: ProductKind; answer: LimitsAnswer }[]): Tightest[] {
  const found = new Map<string, Tightest>();
  for (const { kind, answer } of answers) {
    for (const verdict of answer.verdicts) {
      const key = subjectOf(verdict);
      const known = found.get(key);
      if (known === undefined || isTighter(verdict, known.verdict))
        found.set(key, { verdict: withWarning(verdict, known?.verdict), kind, alike: 1 });
      else
        found.set(key, {
          ...known,
          verdict: withWarning(known.verdict, verdict),
          alike: known.alike + (isAlike(verdict, known.verdict) ? 1 : 0),
        });
    }
  }
  return [...found.values()];
}

/** Of one use nothing is told: it is the product's own. */
const tellUse = ({ verdict, kind, alike }: Tightest, uses: number): LimitVerdict =>
  alike === uses || verdict.verdict === 'no-rule' ? verdict : Object.assign({}, verdict, { forUse: kind });

/**
 * A product that is used in several ways, such as on the face and on the hands: judged for each, and of each rule the
 * tightest verdict counts, with the use that it is of. What no rule speaks of in one use may have one in another.
 */
export function judgeUses(
  tables: SafetyTables,
  context: LimitsContext,
  composition: Composition,
  uses: readonly JudgedUse[],
): LimitsAnswer {
  const answers = uses.map(({ kind, ifra }) => ({
    kind,
    answer: judgeMarket(tables, asUsed(context, kind), composition, ifra),
  }));
  const [only] = answers;
  if (only !== undefined && answers.length === 1) return only.answer;
  const tightest = tightestBySubject(answers);
  const ruled = new Set(
    tightest.flatMap(({ verdict }) => (verdict.verdict === 'no-rule' ? [] : verdict.members)),
  );
  const verdicts = tightest
    .filter(({ verdict }) => verdict.verdict !== 'no-rule' || !ruled.has(verdict.name))
    .map((each) => tellUse(each, uses.length));
  const sums = answers.flatMap(({ answer }) => answer.sumOfShares ?? []);
  return {
    verdicts,
    decidedBy: tellDecidedBy(verdicts),
    ...(sums.length > 0 && { sumOfShares: Math.max(...sums) }),
  };
}

/** A part of the body or a type that this use does not name is not the other use's. */
export function asUsed(
  { bodyPart: _part, productType: _type, ...context }: LimitsContext,
  { use, category, bodyPart, productType }: ProductKind,
): LimitsContext {
  return {
    ...context,
    use,
    category,
    ...(bodyPart !== undefined && { bodyPart }),
    ...(productType !== undefined && { productType }),
  };
}
