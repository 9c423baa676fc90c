import { exact } from '../quantity/index.ts';
import type { MarketCheck } from './composition-check.ts';
import type { LimitVerdict } from './limit-verdict.ts';
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
  /** Over by a remembered figure, and by half of it too: the paper is worth asking for all the same. */
  readonly over: readonly RememberedThing[];
}

/** "memory": nobody has seen the printed page, or the supplier's paper. */
const rememberedOf = (amount: string | undefined, rule: string | undefined): Remembered[] => [
  ...(amount === 'memory' ? (['amount'] as const) : []),
  ...(rule === 'memory' ? (['rule'] as const) : []),
];

/** A remembered figure may be wrong by up to half of itself, either way (our own convention). */
const LEAST = '0.5';
const MOST = '1.5';

interface Compared extends Pick<RememberedThing, 'percent' | 'boundPercent' | 'remembered'> {
  readonly isOver: boolean;
  /** The bound itself is over it. */
  readonly isStrict: boolean;
}

/**
 * Is there a value within half and one and a half of what is remembered that lies on the other side of the bound? By
 * multiplying: a x amount against b x bound, with a and b at the ends that are worst, and 1 for what somebody read.
 */
function mayChangeSides({ percent, boundPercent, remembered, isOver, isStrict }: Compared): boolean {
  const scaled = (what: Remembered, value: number, worst: string) =>
    exact(value).times(remembered.includes(what) ? worst : 1);
  if (remembered.length === 0) return false;
  const amount = scaled('amount', percent, isOver ? LEAST : MOST);
  const bound = scaled('rule', boundPercent, isOver ? MOST : LEAST);
  const wouldBeOver = isStrict ? amount.gte(bound) : amount.gt(bound);
  return wouldBeOver !== isOver;
}

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

const judgeLimit = (thing: RememberedThing, { verdict, isStrict = false }: LimitVerdict): Judged => ({
  thing,
  hangs: mayChangeSides({ ...thing, isOver: verdict === 'over', isStrict }),
  isWithin: verdict === 'within',
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

function judgeNames({ market, naming }: MarketCheck): Judged[] {
  const named = naming.named.map((row): Judged => {
    const thing = nameThing(market, row.labelName, row.thresholdPercent, row);
    return { thing, hangs: mayChangeSides({ ...thing, isOver: true, isStrict: false }), isWithin: true };
  });
  const below = naming.notNamed.flatMap((row): Judged[] => {
    const { reason, thresholdPercent } = row;
    if (reason !== 'not-over-threshold' || thresholdPercent === undefined || row.percent === 0) return [];
    const thing = nameThing(market, row.name, thresholdPercent, row);
    return [{ thing, hangs: mayChangeSides({ ...thing, isOver: false, isStrict: false }), isWithin: true }];
  });
  return [...named, ...below];
}

/**
 * What of a check would be another if a figure that is only remembered were wrong. Percent by mass of the product.
 *
 * It hangs on memory where the amount or the rule is remembered (confidence "memory") and another verdict, or another
 * answer to whether it is named, follows from some value within half and one and a half of the remembered figure; where
 * both are remembered, of both at once. Judged on the most that it may hold, as the check is; of a sum of which a part
 * is remembered the whole counts as remembered. It is firm where it is within, or named or not named, and does not hang.
 * What stays over all the same stands apart; what is not known, and over by figures that somebody read, is neither.
 */
export function findWhatHangsOnMemory(markets: readonly MarketCheck[]): MemoryOfCheck {
  const judged = markets.flatMap((market) => [
    ...market.verdicts.flatMap((verdict) => {
      const thing = ofLimit(market.market, verdict);
      return thing ? [judgeLimit(thing, verdict)] : [];
    }),
    ...judgeNames(market),
  ]);
  return {
    firm: judged.filter(({ hangs, isWithin }) => isWithin && !hangs).map(({ thing }) => thing),
    hangs: judged.filter(({ hangs }) => hangs).map(({ thing }) => thing),
    over: judged
      .filter(({ hangs, isWithin, thing }) => !isWithin && !hangs && thing.remembered.length > 0)
      .map(({ thing }) => thing),
  };
}
