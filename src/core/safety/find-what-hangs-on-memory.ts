import type { MarketCheck, RangedContribution } from './composition-check.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import { addPercents, comparePercent, picopercentFrom, readPercent } from './percent-sum.ts';
import type { Market } from './safety-table-rows.ts';
import type { Told } from './told.ts';

/** What of it nobody has read: how much there is, or the rule that it is judged by. */
export type Remembered = 'amount' | 'rule';

export interface RememberedThing {
  readonly market: Market;
  /** A limit of law or Standards, or a name that belongs on the label or does not. */
  readonly about: 'limit' | 'name';
  readonly substance: string;
  readonly percent: number;
  /** The limit, or the threshold of naming. */
  readonly boundPercent: number;
  readonly kind?: LimitVerdict['kind'];
  readonly citation?: string;
  readonly remembered: readonly Remembered[];
  readonly fromMaterials: readonly string[];
}

export interface MemoryOfCheck {
  readonly firm: readonly RememberedThing[];
  readonly hangs: readonly RememberedThing[];
}

/** "memory": nobody has seen the printed page, or the supplier's paper. */
const rememberedOf = (amount: string | undefined, rule: string | undefined): Remembered[] => [
  ...(amount === 'memory' ? (['amount'] as const) : []),
  ...(rule === 'memory' ? (['rule'] as const) : []),
];

/** A remembered figure may be wrong by half: what lies above half of its bound could lie over it (our own convention). */
const isNear = (percent: number, bound: number): boolean => percent * 2 > bound;

const leastOf = (contributions: readonly RangedContribution[], members: readonly string[]) =>
  addPercents(
    contributions
      .filter(({ name }) => members.includes(name))
      .map(({ leastPercent = 0 }) => readPercent(leastPercent)),
  );

function ofLimit(market: Market, verdict: LimitVerdict): RememberedThing | undefined {
  const { verdict: word, percent, limitPercent, name, kind, citation } = verdict;
  if ((word !== 'within' && word !== 'over') || limitPercent === undefined || percent === 0) return undefined;
  return {
    market,
    about: 'limit',
    substance: name,
    percent,
    boundPercent: limitPercent,
    ...(kind !== undefined && { kind }),
    ...(citation !== undefined && { citation }),
    remembered: rememberedOf(verdict.amountConfidence, verdict.confidence),
    fromMaterials: verdict.fromMaterials ?? [],
  };
}

interface Judged {
  readonly thing: RememberedThing;
  readonly hangs: boolean;
  /** Over by figures that somebody read is no question of memory. */
  readonly isWithin: boolean;
}

const judgeLimit = (thing: RememberedThing, word: LimitVerdict['verdict']): Judged => ({
  thing,
  hangs: thing.remembered.length > 0 && (word === 'over' || isNear(thing.percent, thing.boundPercent)),
  isWithin: word === 'within',
});

const nameThing = (
  market: Market,
  substance: string,
  boundPercent: number,
  { percent, amountConfidence, fromMaterials = [] }: Omit<Told, 'name'>,
): RememberedThing => ({
  market,
  about: 'name',
  substance,
  percent,
  boundPercent,
  remembered: rememberedOf(amountConfidence, undefined),
  fromMaterials,
});

function judgeNames({ market, naming }: MarketCheck, contributions: readonly RangedContribution[]): Judged[] {
  const named = naming.named.map((row): Judged => {
    const thing = nameThing(market, row.labelName, row.thresholdPercent, row);
    const mayStayOff =
      comparePercent(leastOf(contributions, row.members), picopercentFrom(row.thresholdPercent)) <= 0;
    return { thing, hangs: thing.remembered.length > 0 && mayStayOff, isWithin: true };
  });
  const below = naming.notNamed.flatMap((row): Judged[] => {
    const { reason, thresholdPercent } = row;
    if (reason !== 'not-over-threshold' || thresholdPercent === undefined || row.percent === 0) return [];
    const thing = nameThing(market, row.name, thresholdPercent, row);
    return [
      { thing, hangs: thing.remembered.length > 0 && isNear(row.percent, thresholdPercent), isWithin: true },
    ];
  });
  return [...named, ...below];
}

/**
 * What of a check would be another if a figure that is only remembered were wrong. Percent by mass of the product.
 *
 * It hangs on memory where the amount or the rule is remembered (confidence "memory") and
 * - a limit is broken, or the most lies above half of it (2 x most > limit);
 * - a name is on the label although the least does not pass its threshold, so that the remembered range crosses it; or
 *   is not on it although the most lies above half of the threshold.
 * It is firm where it is within, or named or not named, and does not hang. What is over by figures that somebody read,
 * and what is not known, is neither.
 */
export function findWhatHangsOnMemory(
  markets: readonly MarketCheck[],
  contributions: readonly RangedContribution[],
): MemoryOfCheck {
  const judged = markets.flatMap((market) => [
    ...market.verdicts.flatMap((verdict) => {
      const thing = ofLimit(market.market, verdict);
      return thing ? [judgeLimit(thing, verdict.verdict)] : [];
    }),
    ...judgeNames(market, contributions),
  ]);
  return {
    firm: judged.filter(({ hangs, isWithin }) => isWithin && !hangs).map(({ thing }) => thing),
    hangs: judged.filter(({ hangs }) => hangs).map(({ thing }) => thing),
  };
}
