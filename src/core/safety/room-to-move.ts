import { type Fraction, fractionOf, isWithin, type StretchEnd, stretchAbove } from '../linear/index.ts';
import type { Exact } from '../quantity/index.ts';
import { type CountedName, type ListedIngredients, nameStops, orderStops } from './label-stops.ts';
import { countAsMoved, countNow, difference, level, type MovingLine } from './moving-line.ts';
import { listNamingThresholds, type NamingContext } from './name-allergens.ts';
import { boundsOnParts, composeParts, type PartContents, weightsOfParts } from './part-bounds.ts';
import { kindOfBreak, type RoomBreak, type RoomKind, type RoomStop } from './room-breaks.ts';
import type { SafetyTables } from './safety-tables.ts';
import type { JudgedPlace } from './scent-in-product.ts';
import type { ScentBound } from './scent-program.ts';

/** A label of one market: what it lists, and as what its allergens are named. */
export interface RoomLabel extends ListedIngredients {
  readonly naming: NamingContext;
}

export interface RoomQuestion {
  /** The formula's lines: what each brings in at the most, and its percent of the whole; a hundred in all. */
  readonly parts: readonly PartContents[];
  readonly percents: readonly Fraction[];
  /** Every market and use that it is judged for. */
  readonly places: readonly JudgedPlace[];
  /** Limits that no table holds, by line: the report's (kind assessor), the suppliers'. */
  readonly ownBounds: readonly ScentBound[];
  readonly labels: readonly RoomLabel[];
}

/** How far a line may go in one direction, and what breaks beyond. */
export interface RoomBound {
  /** Percent by mass of the finished product, exactly. */
  readonly at: Fraction;
  /** The same, at the twelfth place rounded to the inside. */
  readonly percent: Exact;
  /** Whether that much itself is still right. */
  readonly isIncluded: boolean;
  readonly breaks: RoomBreak;
  readonly about: readonly string[];
}

/** By what breaks first; undefined where nothing known of that kind does. */
export type RoomSide = Readonly<Partial<Record<RoomKind, RoomBound>>>;

export interface LineRoom {
  /** undefined: it is the whole formula, and nothing else could give way. */
  readonly room: { readonly up: RoomSide; readonly down: RoomSide } | undefined;
}

export interface RoomAnswer {
  readonly lines: readonly LineRoom[];
  /** What does not hold as it is: of these no line says how far it may go. */
  readonly broken: readonly Omit<RoomStop, 'outside'>[];
}

type LineStops = (line: MovingLine) => RoomStop[];

/**
 * Room to move: for each line of a formula how far up and down it may go, all others keeping their proportions, before the
 * printed label is no longer right, the formula leaves the assessor's report, or a limit is broken.
 *
 * Everything that is counted is a straight line in the line's percent x, w x + r (100 - x): each threshold is met at one x
 * exactly, a quotient of whole numbers. Judged on the most that the lines may bring in. Valid for 0 < x < 100, where which
 * rules speak does not change; what is not known now stays not known.
 */
export function findRoomToMove(tables: SafetyTables, question: RoomQuestion): RoomAnswer {
  const { percents } = question;
  const sources = listSources(tables, question);
  const moving = percents.map((percent, place): MovingLine => ({ place, percent }));
  const open = moving.filter(({ percent }) => percent.compare(WHOLE) < 0);
  const stops = new Map(open.map((line) => [line.place, sources.flatMap((source) => source(line))]));
  const [any] = open;
  const broken = any
    ? (stops.get(any.place) ?? []).filter((stop) => isWithin(any.percent, stop.outside))
    : [];
  return {
    lines: moving.map(({ place, percent }) => ({ room: roomOf(stops.get(place), percent) })),
    broken: mergeAlike(broken),
  };
}

const WHOLE = fractionOf(100);

function listSources(tables: SafetyTables, question: RoomQuestion): LineStops[] {
  const { parts, percents, places, ownBounds, labels } = question;
  const composition = composeParts(tables, parts);
  const published = places.flatMap(({ context, about }) =>
    boundsOnParts(tables, context, composition, parts.length).map((bound) => ({ ...bound, about: [about] })),
  );
  const names = labels.flatMap(({ naming, about, ingredients }): CountedName[] => {
    const listed = new Set(ingredients.map(({ name }) => normalise(name)));
    return listNamingThresholds(naming, composition)
      .filter(({ labelName }) => !listed.has(normalise(labelName)))
      .map(({ labelName, thresholdPercent, members }) => ({
        name: labelName,
        thresholdPercent,
        weights: weightsOfParts(
          members.map((member) => ({ member })),
          parts.length,
        ),
        about,
      }));
  });
  return [
    ...[...published, ...ownBounds].map((bound) => boundStops(bound, percents)),
    ...names.map((name) => nameStops(name, percents)),
    ...labels.map((label) => orderStops(label, percents)),
  ];
}

const normalise = (name: string): string => name.trim().toLowerCase();

function boundStops(bound: ScentBound, percents: readonly Fraction[]): LineStops {
  const { name, told, most, weights, about = [] } = bound;
  const counted = countNow(weights, percents);
  // At least so much stands as at most the negative of it.
  const side = most.sign < 0 ? 'least' : 'most';
  const breaks: RoomBreak =
    told.kind === 'assessor' ? { what: 'report', name, told, side } : { what: 'limit', name, told };
  return (line) => {
    const outside = stretchAbove(
      difference(countAsMoved(counted, line), level(most)),
      told.isStrict === true,
    );
    return outside ? [{ breaks, about, outside }] : [];
  };
}

function roomOf(stops: readonly RoomStop[] | undefined, percent: Fraction): LineRoom['room'] {
  if (!stops) return undefined;
  const intact = stops.filter(({ outside }) => !isWithin(percent, outside));
  return { up: sideOf(intact, percent, 'up'), down: sideOf(intact, percent, 'down') };
}

type Direction = 'up' | 'down';

interface Reached {
  readonly stop: RoomStop;
  readonly end: StretchEnd;
}

function sideOf(stops: readonly RoomStop[], percent: Fraction, direction: Direction): RoomSide {
  const nearest = new Map<RoomKind, Reached[]>();
  for (const stop of stops) {
    const end = direction === 'up' ? stop.outside.from : stop.outside.to;
    if (!end || isBehind(end, percent, direction) || isOutOfReach(end)) continue;
    const kind = kindOfBreak(stop.breaks);
    const known = nearest.get(kind) ?? [];
    const side = known[0] ? compareEnds(end, known[0].end, direction) : -1;
    if (side < 0) nearest.set(kind, [{ stop, end }]);
    else if (side === 0) nearest.set(kind, [...known, { stop, end }]);
  }
  return Object.fromEntries([...nearest].map(([kind, reached]) => [kind, tellBound(reached, direction)]));
}

const isBehind = ({ at }: StretchEnd, percent: Fraction, direction: Direction): boolean =>
  direction === 'up' ? at.compare(percent) < 0 : at.compare(percent) > 0;

/** A line is more than nothing and less than all of the formula. */
const isOutOfReach = ({ at, isIn }: StretchEnd): boolean =>
  at.sign < 0 || at.compare(WHOLE) > 0 || (!isIn && (at.sign === 0 || at.compare(WHOLE) === 0));

/** Below nought: the one is reached first. An end that is broken itself is reached before one that is not. */
function compareEnds(one: StretchEnd, other: StretchEnd, direction: Direction): number {
  const side = direction === 'up' ? one.at.compare(other.at) : other.at.compare(one.at);
  return side === 0 ? Number(other.isIn) - Number(one.isIn) : side;
}

const PLACES = 12;

/** Where several break at once the first is named, with every place that it holds in. */
function tellBound(reached: readonly Reached[], direction: Direction): RoomBound {
  const [first] = reached;
  const [merged] = mergeAlike(reached.map(({ stop }) => stop));
  if (!first || !merged) throw new Error('a bound is of something that is reached');
  const { at, isIn } = first.end;
  return {
    ...merged,
    at,
    percent: direction === 'up' ? at.roundedDown(PLACES) : at.roundedUp(PLACES),
    isIncluded: !isIn,
  };
}

/** What breaks in several places stands once. */
function mergeAlike(stops: readonly RoomStop[]): Omit<RoomStop, 'outside'>[] {
  const merged = new Map<string, Omit<RoomStop, 'outside'>>();
  for (const { breaks, about } of stops) {
    const key = keyOf(breaks);
    const known = merged.get(key);
    merged.set(key, { breaks, about: [...new Set([...(known?.about ?? []), ...about])] });
  }
  return [...merged.values()];
}

function keyOf(breaks: RoomBreak): string {
  if (breaks.what === 'order') return `order|${breaks.first}|${breaks.second}`;
  const rule = 'told' in breaks ? [breaks.told.kind, breaks.told.ruleId, breaks.told.source].join('|') : '';
  return `${breaks.what}|${breaks.name}|${rule}`;
}
