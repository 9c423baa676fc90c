import type { z } from 'zod';
import { type formulas, type Saying, saying } from '../contract/index.ts';
import { type Fraction, fractionOf } from '../core/linear/index.ts';
import { type Exact, roundToStep, toText } from '../core/quantity/index.ts';
import type { RoomAnswer, RoomBound, RoomKind, RoomSide } from '../core/safety/index.ts';
import { cutPercent, say } from '../words/index.ts';
import type { FormulaDraft, ReadFacts } from './check-draft.ts';
import type { FoundRoom } from './find-room.ts';

export type RoomView = z.output<typeof formulas.roomToMove>;
type LineView = RoomView['lines'][number];
type BoundView = NonNullable<LineView['up']['label']>;
type Direction = 'up' | 'down';

/** Room to move as a page shows it. */
export function viewRoom(facts: ReadFacts, draft: FormulaDraft, found: FoundRoom): RoomView {
  const lines = draft.lines.map((line, index): LineView => {
    const percent = found.percents[index] ?? fractionOf(0);
    const moving = { name: nameOf(facts, line), percent, restGrams: restOf(draft, index) };
    const { up = {}, down = {} } = found.lines[index]?.room ?? {};
    return {
      name: moving.name,
      percent: cutPercent(toText(percent.roundedDown(PLACES))),
      says: found.lines[index]?.room
        ? [sayNearest(up, moving, 'up'), sayNearest(down, moving, 'down')]
        : [saying('room-whole', { name: moving.name })],
      up: viewSide(up, moving, 'up'),
      down: viewSide(down, moving, 'down'),
    };
  });
  return { broken: found.broken.map(sayBroken), lines };
}

const PLACES = 12;

interface Moving {
  readonly name: string;
  readonly percent: Fraction;
  /** What all the other lines weigh in the recipe. */
  readonly restGrams: Fraction;
}

const nameOf = (facts: ReadFacts, { itemKind, itemId }: FormulaDraft['lines'][number]): string =>
  (itemKind === 'material'
    ? facts.materials.get(itemId)?.name
    : (facts.inForce.get(itemId) ?? facts.newest.get(itemId))?.name) ?? '';

const restOf = ({ lines }: FormulaDraft, place: number): Fraction =>
  lines.reduce(
    (sum, { grams }, index) => (index === place ? sum : sum.plus(fractionOf(grams))),
    fractionOf(0),
  );

const viewSide = (side: RoomSide, moving: Moving, direction: Direction): LineView['up'] => {
  const view = (kind: RoomKind): BoundView | null => {
    const bound = side[kind];
    return bound && !isEnd(bound) ? viewBound(bound, moving, direction) : null;
  };
  return { label: view('label'), report: view('report'), limit: view('limit') };
};

/** All or nothing of the formula: no bound that anybody could reach. */
const isEnd = ({ breaks, percent }: RoomBound): boolean =>
  breaks.what === 'leaves-list' && (percent.isZero() || percent.eq(100));

const viewBound = (bound: RoomBound, moving: Moving, direction: Direction): BoundView => ({
  percent: toText(bound.percent),
  shownPercent: toText(cutInward(bound.percent, nowOf(moving), direction) ?? bound.percent),
  grams: gramsAt(bound, moving, direction),
  isIncluded: bound.isIncluded,
  says: sayBound(bound, moving, direction),
});

/** grams = rest x / (100 - x), to the microgram that a recipe keeps; where the bound itself is too much, one less. */
function gramsAt({ at, isIncluded }: RoomBound, { restGrams }: Moving, direction: Direction): string {
  const grams = restGrams.times(at).over(fractionOf(100).minus(at));
  const rounded =
    direction === 'up' ? grams.roundedDown(MICROGRAM_PLACES) : grams.roundedUp(MICROGRAM_PLACES);
  const isAtBound = !isIncluded && grams.compare(fractionOf(rounded)) === 0;
  if (!isAtBound) return toText(rounded);
  return toText(direction === 'up' ? rounded.minus(MICROGRAM) : rounded.plus(MICROGRAM));
}

const MICROGRAM_PLACES = 6;
const MICROGRAM = '0.000001';

const KINDS: readonly RoomKind[] = ['limit', 'report', 'label'];

/** What breaks first; of several at once the limit before the report before the label. */
function sayNearest(side: RoomSide, moving: Moving, direction: Direction): Saying {
  const [nearest] = KINDS.flatMap((kind) => side[kind] ?? []).sort((one, other) =>
    direction === 'up' ? one.percent.cmp(other.percent) : other.percent.cmp(one.percent),
  );
  const { name } = moving;
  if (!nearest || isEnd(nearest))
    return saying(direction === 'up' ? 'room-rise-free' : 'room-fall-free', { name });
  return sayBound(nearest, moving, direction);
}

const nowOf = ({ percent }: Moving): Exact => percent.roundedDown(PLACES);

function sayBound(bound: RoomBound, moving: Moving, direction: Direction): Saying {
  const { name } = moving;
  const now = nowOf(moving);
  const breaks = sayBreak(bound);
  const shown = cutInward(bound.percent, now, direction);
  const codes = (isOfLabel(bound) ? OF_LABEL : OF_STOP)[direction];
  if (shown === undefined) return saying(codes.none, { name, breaks });
  return saying(codes.some, {
    name,
    fromPercent: cutPercent(toText(now), [toText(shown)]),
    toPercent: toText(shown),
    isIncluded: bound.isIncluded || !shown.eq(bound.percent),
    breaks,
  });
}

/** Another name on the label or one less is no danger: what may be goes on, and the label is another. */
const isOfLabel = ({ breaks: { what } }: RoomBound): boolean => what !== 'limit' && what !== 'report';

const OF_STOP = {
  up: { some: 'room-rise', none: 'room-rise-none' },
  down: { some: 'room-fall', none: 'room-fall-none' },
} as const;
const OF_LABEL = {
  up: { some: 'room-label-rise', none: 'room-label-rise-none' },
  down: { some: 'room-label-fall', none: 'room-label-fall-none' },
} as const;

/**
 * As it stands where it has few places; else to three digits that count, rounded to the inside, so that what is shown may
 * be. undefined: no room at all.
 */
function cutInward(bound: Exact, now: Exact, direction: Direction): Exact | undefined {
  const isBeyond = (value: Exact): boolean => (direction === 'up' ? value.gt(now) : value.lt(now));
  if (bound.decimalPlaces() > FEW_PLACES)
    for (let places = placesOfThree(bound); places < PLACES; places += 1) {
      const cut = roundToStep(bound, `1e-${places}`, direction === 'up' ? 'down' : 'up');
      if (isBeyond(cut)) return cut;
    }
  return isBeyond(bound) ? bound : undefined;
}

const FEW_PLACES = 3;
const placesOfThree = (percent: Exact): number => Math.max(0, 2 - percent.e);

const sayBroken = ({ breaks, about }: RoomAnswer['broken'][number]): Saying =>
  saying('room-broken', { breaks: sayBreak({ breaks, about }) });

const ON_LABEL = {
  'name-added': 'room-breaks-name-added',
  'name-dropped': 'room-breaks-name-dropped',
  'leaves-list': 'room-breaks-leaves-list',
} as const;

/** What breaks, as part of a sentence. */
function sayBreak({ breaks, about }: Pick<RoomBound, 'breaks' | 'about'>): string {
  const markets = about.join(', ');
  const hasMarkets = markets !== '';
  if (breaks.what === 'order') {
    const { first, second } = breaks;
    return say(saying('room-breaks-order', { first, second, markets }));
  }
  const { name, what } = breaks;
  if (what === 'limit') {
    const rule = breaks.told.citation ?? breaks.told.source ?? '';
    const code = breaks.told.kind === 'supplier' ? 'room-breaks-supplier' : 'room-breaks-limit';
    return say(saying(code, { name, rule, markets, hasMarkets }));
  }
  if (what === 'report') {
    const report = breaks.told.source ?? '';
    return say(saying('room-breaks-report', { name, report, isMost: breaks.side === 'most' }));
  }
  return say(saying(ON_LABEL[what], { name, markets }));
}
