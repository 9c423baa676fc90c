import type { formulas, making, steps } from '../../contract/index.ts';
import { sumOf, toText } from '../../core/quantity/index.ts';
import type {
  LinkedAttachment,
  listBatchSteps,
  NamedBatchLine,
  ScaleRow,
  SignedAddition,
  SignedBegun,
  SignedResize,
  SignedRound,
  SignedStep,
} from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';
import { orderStages } from './order-stages.ts';
import { standingAt, weighState } from './weigh-state.ts';
import { weighingErrorGrams } from './weighing-error.ts';
import type { WeighingNote } from './weighing-note.ts';

type Screen = making.BatchScreen;
type Step = Awaited<ReturnType<typeof listBatchSteps>>[number];
type StepScreen = Extract<Screen, { kind: 'step' }>;
type StepKind = StepScreen['stepKind'];

export interface ScreenRecords {
  readonly lines: readonly NamedBatchLine[];
  readonly steps: readonly Step[];
  readonly additions: readonly SignedAddition[];
  readonly stepRecords: readonly SignedStep[];
  readonly begun?: readonly SignedBegun[];
  readonly rounds?: readonly SignedRound[];
  readonly resizes?: readonly SignedResize[];
  /** For how far a weighing may be out, where that is looked at. */
  readonly scales?: readonly ScaleRow[];
  readonly photos?: readonly LinkedAttachment[];
  /** What whipping and its cup test are judged by. */
  readonly tins?: readonly steps.AirTin[];
  readonly air?: steps.StepAir | null;
  /** Of a base: how long it sets where its step does not say. */
  readonly base?: { readonly settingHours: formulas.RevisionDetails['settingHours'] } | null;
}

/** One thing to do a screen: stage by stage, first what is weighed in, then what is done with it. */
export function buildScreens(records: ScreenRecords): Screen[] {
  const stages = orderStages(
    records.lines.map((line) => line.stage),
    records.steps.map((step) => step.stage),
  );
  const bare = stages.flatMap((stage) => [
    ...records.lines.filter((line) => line.stage === stage).map((line) => additionScreen(line, records)),
    ...records.steps.filter((step) => step.stage === stage).map((step) => stepScreen(step, records)),
  ]);
  const last = bare.at(-1);
  if (last?.kind === 'step' && records.base) last.isHandedOn = last.stepKind === 'set';
  return bare.map((screen, index) => ({ ...screen, screen: index }));
}

function additionScreen(
  line: NamedBatchLine,
  { additions, scales = [], resizes = [] }: ScreenRecords,
): Screen {
  const note = JSON.parse(line.weighing) as WeighingNote;
  const standing = standingAt(line, additions);
  const state = weighState(line, additions);
  return {
    kind: 'addition',
    screen: 0,
    position: line.position,
    stage: line.stage,
    itemKind: line.item_kind as 'material' | 'formula',
    itemId: line.item_id,
    itemName: line.item_name,
    percent: note.percent,
    lotId: line.lot_id,
    lotNumber: line.lot_number,
    lotNote: note.lotNote,
    exactGrams: line.exact_grams,
    targetGrams: gramsText(line.target_ug),
    lowGrams: gramsText(line.low_ug),
    highGrams: gramsText(line.high_ug),
    scaleId: line.scale_id,
    scaleName: line.scale_name,
    relativeError: note.relativeError,
    smallestWeightGrams: note.smallestWeightGrams,
    warning: note.warning,
    caution: cautionOf(line.material_details),
    shareNow: null,
    entries: listEntries(standing, line),
    inGrams: gramsText(state.inUg),
    leftGrams: gramsText(state.leftUg),
    limit: limitOf(line, note, { weighed: standing, leftUg: state.leftUg, scales }),
    done: state.isDone ? (doneAddition(standing, line) ?? notNeeded(line, resizes)) : null,
  };
}

/** Another lot gave all of it: done by the entry that made the batch as large as that. */
function notNeeded(line: NamedBatchLine, resizes: readonly SignedResize[]): making.WeighedIn | null {
  const resize = resizes.findLast((row) => !row.is_struck);
  if (!resize) return null;
  return {
    entryId: resize.entry_id,
    lotId: line.lot_id,
    lotNumber: line.lot_number,
    askedGrams: '0',
    actualGrams: '0',
    at: resize.happened_at,
    by: resize.person_name,
    isPart: false,
    substitute: null,
    scaleName: null,
    reading: null,
    verdict: 'inside',
  };
}

interface WeighedAndLeft {
  readonly weighed: readonly SignedAddition[];
  readonly leftUg: number;
  readonly scales: readonly ScaleRow[];
}

/**
 * Errors of the weighings that stand, each of its own scale and mass, and of the one that is left, as the release counts
 * them; of a scale that nobody knows the errors of nothing is told.
 */
function limitOf(
  line: NamedBatchLine,
  note: WeighingNote,
  { weighed, leftUg, scales }: WeighedAndLeft,
): Extract<Screen, { kind: 'addition' }>['limit'] {
  if (note.timesAllowed == null) return null;
  const left = leftUg > 0 ? [{ scale_id: line.scale_id, actual_ug: leftUg }] : [];
  const errors = [...weighed, ...left].flatMap((each) => weighingErrorGrams(each, scales) ?? []);
  if (errors.length < weighed.length + left.length) return null;
  return {
    exactGrams: line.exact_grams,
    timesAllowed: note.timesAllowed,
    errorGrams: toText(sumOf(errors).toDecimalPlaces(6, 0)),
  };
}

/** A position that is done: its last weighing, with the sum of all. */
function doneAddition(standing: readonly SignedAddition[], line: WeighedLine): making.WeighedIn | null {
  const last = standing.at(-1);
  if (!last) return null;
  const sum = standing.reduce((all, row) => all + row.actual_ug, 0);
  return { ...viewEntry(last, line), actualGrams: gramsText(sum), verdict: judgeBand(sum, line) };
}

/** Each weighing with the verdict of the sum up to it. */
export function listEntries(standing: readonly SignedAddition[], line: WeighedLine): making.WeighedIn[] {
  let sum = 0;
  return standing.map((row) => {
    sum += row.actual_ug;
    const verdict = judgeBand(sum, line);
    const isToCome = row.is_part === 1 && verdict === 'low';
    return { ...viewEntry(row, line), verdict: isToCome ? 'inside' : verdict };
  });
}

export interface WeighedLine extends WeighingBounds {
  readonly item_id: string;
}

const viewEntry = (row: SignedAddition, { item_id }: WeighedLine): Omit<making.WeighedIn, 'verdict'> => ({
  entryId: row.entry_id,
  lotId: row.lot_id,
  lotNumber: row.lot_number,
  askedGrams: gramsText(row.target_ug),
  actualGrams: gramsText(row.actual_ug),
  at: row.happened_at,
  by: row.person_name,
  isPart: row.is_part === 1,
  substitute: row.lot_item_id === item_id ? null : row.lot_item_name,
  scaleName: row.scale_name,
  reading: row.reading === null ? null : (JSON.parse(row.reading) as making.ReadingNote),
});

export interface WeighingBounds {
  readonly low_ug: number;
  readonly high_ug: number;
}

/** Both ends of the band still count as inside. */
export function judgeBand(actual: number, band: WeighingBounds): 'inside' | 'low' | 'high' {
  if (actual < band.low_ug) return 'low';
  return actual > band.high_ug ? 'high' : 'inside';
}

const cautionOf = (details: string | null): string =>
  details === null ? '' : (JSON.parse(details) as { caution?: string }).caution || '';

/** Where the picture of a step lies among those of its batch. */
export const photoHeading = (position: number): string => `step ${position}`;

const WHIPPED: readonly string[] = ['whip', 'cup'];

function stepScreen(step: Step, records: ScreenRecords): StepScreen {
  const { begun = [], rounds = [], photos = [], tins = [], air = null, base = null } = records;
  const isHere = (row: { readonly position: number; readonly is_struck: boolean }) =>
    row.position === step.position && !row.is_struck;
  const row = records.stepRecords.find(isHere);
  const setting = step.kind === 'set' ? base?.settingHours : null;
  const isAir = WHIPPED.includes(step.kind);
  return {
    kind: 'step',
    screen: 0,
    position: step.position,
    stage: step.stage,
    stepKind: step.kind as StepKind,
    what: step.what,
    leastCelsius: step.least_celsius,
    mostCelsius: step.most_celsius,
    minutes: step.minutes,
    caution: step.caution,
    roundMinutes: step.round_minutes,
    rounds: step.rounds,
    growsPercent: step.grows_percent,
    leastHours: step.least_hours ?? setting?.least.toString() ?? null,
    mostHours: step.most_hours ?? setting?.most.toString() ?? null,
    isHandedOn: false,
    begun: begun.filter(isHere).map(viewBegun),
    whipped: rounds.filter(isHere).map(viewRound),
    photos: photos.filter((photo) => photo.heading === photoHeading(step.position)).map(viewPhoto),
    done: row ? doneStep(row) : null,
    tins: isAir ? [...tins] : [],
    air: isAir ? air : null,
  };
}

const doneStep = (row: SignedStep): NonNullable<StepScreen['done']> => ({
  entryId: row.entry_id,
  at: row.happened_at,
  by: row.person_name,
  celsius: row.celsius,
  minutes: row.minutes,
  remark: row.remark,
  weighed: row.weighed === null ? null : (JSON.parse(row.weighed) as steps.StepWeighed),
});

const viewBegun = (row: SignedBegun): steps.StepBegun => ({
  entryId: row.entry_id,
  load: row.load,
  round: row.round,
  minutes: row.minutes,
  at: row.happened_at,
  by: row.person_name,
});

export const viewRound = (row: SignedRound): steps.WhipRound => ({
  entryId: row.entry_id,
  load: row.load,
  round: row.round,
  minutes: row.minutes,
  looked: row.looked as steps.WhippedLook,
  goes: row.goes as 'on' | 'stop',
  celsius: row.celsius,
  cups: JSON.parse(row.cups) as steps.FullCup[],
  remark: row.remark,
  at: row.happened_at,
  by: row.person_name,
});

const viewPhoto = (file: LinkedAttachment): steps.StepPhoto => ({
  id: file.id,
  entryId: file.entry_id,
  caption: file.name,
  at: file.happened_at,
  by: file.person_name,
});
