import { exact, sumOf, toText } from '../../../core/quantity/index.ts';
import type { BodyOf } from '../../api/shapes.ts';
import type { KeptEntry } from '../../away/kept-entry.ts';
import type { Addition, Batch, Screen, Step } from './batch.ts';
import { lotNumberIn } from './lot-to-use.ts';
import { bandVerdict } from './weight-verdict.ts';

/** An id as a person: names are known here, and the entry carries the id only. */
export type NameOf = (personId: string) => string;

type Change = (batch: Batch, entry: KeptEntry, nameOf: NameOf) => Batch;

const onScreen = (
  batch: Batch,
  isIt: (screen: Screen) => boolean,
  change: (screen: Screen) => Screen,
): Batch => ({
  ...batch,
  screens: batch.screens.map((screen) => (isIt(screen) ? change(screen) : screen)),
});

/** One more weighing at its position; the position is done once a weighing is no part of more to come. */
const addAddition: Change = (batch, entry, nameOf) => {
  const body = entry.body as BodyOf<'recordAddition'>;
  const isIt = (screen: Screen) => screen.kind === 'addition' && screen.position === body.position;
  return onScreen(batch, isIt, (screen) => withWeighing(screen as Addition, entry, nameOf));
};

function withWeighing(screen: Addition, entry: KeptEntry, nameOf: NameOf): Addition {
  const body = entry.body as BodyOf<'recordAddition'>;
  const { actualGrams, isPart = false, lotId, scaleId, restLotId = null } = body;
  const inGrams = toText(sumOf([screen.inGrams, actualGrams]));
  const weighed = {
    entryId: entry.id,
    lotId,
    lotNumber: lotNumberIn(screen, lotId) ?? '',
    askedGrams: screen.leftGrams === '0' ? screen.targetGrams : screen.leftGrams,
    actualGrams,
    at: entry.at,
    by: nameOf(entry.body.stamp.by),
    verdict: isPart ? ('inside' as const) : verdictOf(inGrams, screen),
    isPart,
    substitute: null,
    scaleName: screen.scaleId === scaleId ? screen.scaleName : null,
    reading:
      restLotId === null ? null : { asked: null, vessel: null, restLot: { id: restLotId, number: '' } },
  };
  const left = exact(screen.targetGrams).minus(inGrams);
  return {
    ...screen,
    isKept: true,
    entries: [...screen.entries, weighed],
    inGrams,
    leftGrams: isPart && left.gt(0) ? toText(left) : '0',
    done: isPart ? null : { ...weighed, actualGrams: inGrams },
  };
}

const verdictOf = (grams: string, screen: Addition): 'inside' | 'low' | 'high' => {
  const verdict = bandVerdict(grams, screen);
  return verdict === 'nothing' ? 'low' : verdict;
};

const addStep: Change = (batch, entry, nameOf) => {
  const { position, celsius, minutes, remark, weighed = null } = entry.body as BodyOf<'recordStep'>;
  const done = {
    entryId: entry.id,
    at: entry.at,
    by: nameOf(entry.body.stamp.by),
    celsius,
    minutes,
    remark,
    weighed,
  };
  return onStep(batch, position, (step) => ({ ...step, isKept: true, done }));
};

const onStep = (batch: Batch, position: number, change: (step: Step) => Step): Batch =>
  onScreen(
    batch,
    (screen) => screen.kind === 'step' && screen.position === position,
    (screen) => change(screen as Step),
  );

/** That is all there is: done with what is in. */
const addClosing: Change = (batch, entry) => {
  const { position } = entry.body as BodyOf<'closeAddition'>;
  const isIt = (screen: Screen) => screen.kind === 'addition' && screen.position === position;
  return onScreen(batch, isIt, (screen) => closed(screen as Addition));
};

function closed(screen: Addition): Addition {
  const last = screen.entries.at(-1);
  if (!last) return screen;
  const done = { ...last, actualGrams: screen.inGrams, verdict: verdictOf(screen.inGrams, screen) };
  return { ...screen, isKept: true, leftGrams: '0', done };
}

/** A step, or a round of whipping, has begun: its time runs from the moment that was entered here. */
const addBeginning: Change = (batch, entry, nameOf) => {
  const { position, load = 1, round = 1, minutes = null } = entry.body as BodyOf<'beginStep'>;
  const by = nameOf(entry.body.stamp.by);
  const begun = { entryId: entry.id, load, round, minutes, at: entry.at, by };
  return onStep(batch, position, (step) => ({ ...step, isKept: true, begun: [...step.begun, begun] }));
};

const addRound: Change = (batch, entry, nameOf) => {
  const { stamp, position, cups = [], remark = '', sure, ...round } = entry.body as BodyOf<'recordRound'>;
  const tinned = cups.map((cup) => ({ ...cup, tinOf: cup.tinOf ?? '' }));
  const whipped = { ...round, cups: tinned, remark, entryId: entry.id, at: entry.at, by: nameOf(stamp.by) };
  return onStep(batch, position, (step) => ({ ...step, isKept: true, whipped: [...step.whipped, whipped] }));
};

/** What is struck on this tablet only is open again on it. */
const addStrike: Change = (batch, entry) => {
  const { entryId } = entry.body as BodyOf<'strikeAddition'>;
  const screens = batch.screens.map((screen) =>
    screen.kind === 'addition' ? withoutWeighing(screen, entryId) : withoutStep(screen, entryId),
  );
  return { ...batch, screens, spills: batch.spills.filter((spill) => spill.entryId !== entryId) };
};

const withoutStep = (screen: Step, entryId: string): Step =>
  screen.done?.entryId === entryId
    ? { ...screen, isKept: true, done: null }
    : {
        ...screen,
        begun: screen.begun.filter((each) => each.entryId !== entryId),
        whipped: screen.whipped.filter((each) => each.entryId !== entryId),
      };

function withoutWeighing(screen: Addition, entryId: string): Addition {
  const entries = screen.entries.filter((each) => each.entryId !== entryId);
  if (entries.length === screen.entries.length) return screen;
  const inGrams = toText(sumOf(entries.map(({ actualGrams }) => actualGrams)));
  const last = entries.at(-1);
  // Of what came before the last weighing, more is asked for again where too little is left of it.
  const isLast = screen.entries.at(-1)?.entryId === entryId;
  const isDone = last !== undefined && !last.isPart && (isLast || exact(inGrams).gte(screen.lowGrams));
  const left = exact(screen.targetGrams).minus(inGrams);
  return {
    ...screen,
    isKept: true,
    entries,
    inGrams,
    leftGrams: !isDone && left.gt(0) ? toText(left) : '0',
    done: isDone ? { ...last, actualGrams: inGrams } : null,
  };
}

/** Spilt before it went in: with it goes what was entered of it already. */
const addSpill: Change = (batch, entry, nameOf) => {
  const { position, lotId, grams, reason, entryId } = entry.body as BodyOf<'recordSpill'>;
  const isHere = (screen: Screen) => screen.kind === 'addition' && screen.position === position;
  const own = batch.screens.find(isHere) as Addition | undefined;
  const spill = {
    entryId: entry.id,
    screen: own?.screen ?? null,
    item: own?.itemName ?? '',
    lotNumber: own?.lotId === lotId ? (own.lotNumber ?? '') : '',
    grams,
    reason,
    at: entry.at,
    by: nameOf(entry.body.stamp.by),
  };
  const told = { ...batch, spills: [...batch.spills, spill] };
  return entryId == null
    ? told
    : onScreen(told, isHere, (screen) => withoutWeighing(screen as Addition, entryId));
};

const addDeviation: Change = (batch, entry, nameOf) => {
  const { screen, what, why } = entry.body as BodyOf<'recordDeviation'>;
  const by = nameOf(entry.body.stamp.by);
  const deviation = { entryId: entry.id, screen, step: null, offGrams: null, what, why, at: entry.at, by };
  return { ...batch, deviations: [...batch.deviations, deviation] };
};

const CHANGES: Readonly<Record<string, Change>> = {
  recordAddition: addAddition,
  recordStep: addStep,
  strikeAddition: addStrike,
  recordDeviation: addDeviation,
  beginStep: addBeginning,
  recordRound: addRound,
  closeAddition: addClosing,
  recordSpill: addSpill,
};

/** What the workshop told of already: it may have arrived, and its answer was lost. */
const knownEntries = ({ screens, struck, deviations, spills }: Batch): ReadonlySet<string> =>
  new Set([
    ...screens.flatMap(({ done }) => (done ? [done.entryId] : [])),
    ...screens.flatMap((screen) =>
      (screen.kind === 'addition' ? screen.entries : [...screen.begun, ...screen.whipped]).map(
        ({ entryId }) => entryId,
      ),
    ),
    ...struck.map(({ entryId }) => entryId),
    ...deviations.map(({ entryId }) => entryId),
    ...spills.map(({ entryId }) => entryId),
  ]);

/** The batch as whoever stands before this tablet knows it: as the workshop told it, with what lies here, in order. */
export function projectKept(batch: Batch, kept: readonly KeptEntry[], nameOf: NameOf): Batch {
  const known = knownEntries(batch);
  const own = kept.filter(({ id, params }) => params.id === batch.id && !known.has(id));
  return own.reduce((now, entry) => CHANGES[entry.route]?.(now, entry, nameOf) ?? now, batch);
}
