import type { making } from '../../contract/index.ts';
import type { listBatchSteps, NamedBatchLine, SignedAddition, SignedStep } from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';
import { orderStages } from './order-stages.ts';
import { standingAt, weighState } from './weigh-state.ts';
import type { WeighingNote } from './weighing-note.ts';

type Screen = making.BatchScreen;
type Step = Awaited<ReturnType<typeof listBatchSteps>>[number];
type StepKind = Extract<Screen, { kind: 'step' }>['stepKind'];

export type CupTin = Extract<Screen, { kind: 'step' }>['tins'][number];

export interface ScreenRecords {
  readonly lines: readonly NamedBatchLine[];
  readonly steps: readonly Step[];
  readonly additions: readonly SignedAddition[];
  readonly stepRecords: readonly SignedStep[];
  /** What a cup test is for. */
  readonly tins?: readonly CupTin[];
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
  return bare.map((screen, index) => ({ ...screen, screen: index }));
}

function additionScreen(line: NamedBatchLine, { additions }: ScreenRecords): Screen {
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
    done: state.isDone ? doneAddition(standing, line) : null,
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
  actualGrams: gramsText(row.actual_ug),
  at: row.happened_at,
  by: row.person_name,
  isPart: row.is_part === 1,
  substitute: row.lot_item_id === item_id ? null : row.lot_item_name,
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

function stepScreen(step: Step, { stepRecords, tins = [] }: ScreenRecords): Screen {
  const row = stepRecords.find((record) => record.position === step.position && !record.is_struck);
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
    done: row
      ? {
          entryId: row.entry_id,
          at: row.happened_at,
          by: row.person_name,
          celsius: row.celsius,
          minutes: row.minutes,
          remark: row.remark,
          weighed: row.weighed === null ? null : (JSON.parse(row.weighed) as making.StepWeighed),
        }
      : null,
    tins: step.kind === 'cup' ? [...tins] : [],
  };
}
