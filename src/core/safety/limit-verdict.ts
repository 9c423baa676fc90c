import type { MatchDoubt } from './match.ts';
import type { ProductKind } from './situations.ts';
import type { RuleTold, Told } from './told.ts';

export type VerdictWord = 'within' | 'over' | 'prohibited' | 'unknown' | 'no-rule';

/** Why a verdict is `unknown`. */
export type UnknownReason =
  | MatchDoubt
  /** The amount of the substance in one of its materials is not known. */
  | 'amount-not-known'
  /** A rule exists, its figure is not known here. */
  | 'value-not-known'
  /** The row limits finished products, and none of its rules names this use. */
  | 'use-not-covered'
  /** The rule counts something that the composition does not say: an acid of its salt, a vitamin of its ester. */
  | 'counted-as-other'
  /** The rule is about the raw material or about a measured value: its certificate answers. */
  | 'needs-certificate'
  /** The tables hold no rule of this market's law at all. */
  | 'law-not-in-tables'
  /** Only what a list of law names may be used as this, and the list is not in the tables. */
  | 'positive-list-not-in-tables'
  /** It is on that list; where and how it may be used is not in the tables. */
  | 'conditions-not-in-tables';

/** How a rule was met. */
export interface Judged {
  readonly limitPercent?: number;
  /** A figure that is not a share of the finished product: a peroxide value, a pH. */
  readonly limitValue?: number;
  readonly limitUnit?: string;
  /** What was measured, in that unit, where it breaks the limit, and the lots that it was measured of. */
  readonly foundValue?: string;
  readonly ofLots?: readonly string[];
  readonly verdict: VerdictWord;
  readonly reason?: UnknownReason;
  /** Rules that an unknown may fall under. */
  readonly mayBe?: readonly string[];
  readonly tellApartBy?: readonly string[];
}

export interface LimitVerdict extends Told, RuleTold, Judged {
  /** The use that it was judged for, where the product has several and they differ. */
  readonly forUse?: ProductKind;
}

const NO_RULE: RuleTold = {};

/**
 * Object.assign, because a composition is checked while it is typed: in Node 20 a literal that spreads three objects
 * took fifty times as long (measured).
 */
export const tellVerdict = (told: Told, judged: Judged, rule: RuleTold = NO_RULE): LimitVerdict =>
  Object.assign({}, told, rule, judged);
