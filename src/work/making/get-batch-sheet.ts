import { judgeCup } from '../../core/filling/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { exact, toText } from '../../core/quantity/index.ts';
import {
  buildBatchRecord,
  buildWeighingSheet,
  type DoneAlready,
  type Paper as Layout,
  type RecordedAddition,
  type StruckEntry,
} from '../../print/layout/index.ts';
import {
  findBatch,
  listBatchLines,
  listRunReady,
  type NamedBatchLine,
  type Reader,
} from '../../storage/index.ts';
import { cleaningWords, printWords, readyWords, say, sayTime } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { viewReady } from '../filling/view-ready.ts';
import { localDate } from '../local-date.ts';
import { painter } from '../painter.ts';
import type { Paper, UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
import { type BatchView, viewBatch } from './batch-view.ts';
import { listMishaps } from './list-mishaps.ts';
import { readStepRecords } from './read-step-records.ts';
import type { WeighingNote } from './weighing-note.ts';

type Screen = BatchView['screens'][number];
type Addition = Extract<Screen, { kind: 'addition' }>;
type Step = Extract<Screen, { kind: 'step' }>;

const additionsOf = (view: BatchView): Addition[] =>
  view.screens.filter((screen): screen is Addition => screen.kind === 'addition');
const stepsOf = (view: BatchView): Step[] =>
  view.screens.filter((screen): screen is Step => screen.kind === 'step');

/** While it is being made, the weighing sheet to write on; afterwards, the record of what was done. */
export const getBatchSheet: UseCase<'getBatchSheet'> = async (context, { params: { id = '' } }) => {
  const { db } = context.storage;
  const view = await viewBatch(context, id);
  if (!view.ok) return view;
  const batch = view.value;
  const layout =
    batch.state === 'making'
      ? await layOutSheet(context, batch, await listBatchLines(db, id))
      : await layOutRecord(context, batch);
  const name = batch.state === 'making' ? 'weighing-sheet' : 'batch-record';
  return paint(`${name}-${batch.number}.pdf`, layout);
};

async function paint(fileName: string, layout: Layout): Promise<Result<Paper>> {
  const { paintPaperPdf } = await painter();
  const bytes = await paintPaperPdf(layout);
  return bytes.ok ? done({ fileName, bytes: bytes.value }) : bytes;
}

const stepText = (step: Step): string =>
  printWords.batchRecord.stepText(step.what, step.leastCelsius, step.mostCelsius, step.minutes, step);

async function layOutSheet(
  context: Context,
  batch: BatchView,
  lines: readonly NamedBatchLine[],
): Promise<Layout> {
  const house = await workshopDetails(context);
  const cautions = batch.screens.map((screen) => screen.caution).filter((caution) => caution !== '');
  return buildWeighingSheet({
    workshopName: house.name,
    batchNumber: batch.number,
    productName: batch.formulaName,
    revision: String(batch.revisionNumber),
    purpose: batch.purpose,
    makeOn: localDate(batch.startedAt, house.timeZone),
    batchGrams: batch.plannedGrams,
    rows: additionsOf(batch).map((row) => {
      const remarks = [row.warning, row.lotNote].flatMap((each) => (each ? [say(each)] : []));
      return {
        stage: row.stage,
        materialName: row.itemName,
        lot: row.lotNumber ?? '',
        targetGrams: row.targetGrams,
        scaleName: row.scaleName ?? '',
        ...toleranceOf(lines, row.position),
        ...(remarks.length > 0 && { warning: remarks.join(' ') }),
        ...weighedAlready(row, house.timeZone),
      };
    }),
    steps: stepsOf(batch).map((step) => ({
      what: stepText(step),
      ...(step.done && { done: doneAlready(seenOf(step.done), step.done, house.timeZone) }),
    })),
    cautions: [...new Set(cautions)],
    createdAt: context.machine.now(),
  });
}

/** Whoever goes on by paper, with the tablet flat, weighs nothing twice. */
function weighedAlready({ entries, inGrams }: Addition, timeZone: string): { readonly done?: DoneAlready } {
  const last = entries.at(-1);
  return last ? { done: doneAlready(printWords.weighingSheet.grams(inGrams), last, timeZone) } : {};
}

const doneAlready = (
  what: string,
  { at, by }: { readonly at: string; readonly by: string },
  timeZone: string,
): DoneAlready => ({ what, when: sayTime(at, timeZone), who: initialsOf(by) });

/** AQ for Ada Quill: the boxes are for initials. */
const initialsOf = (name: string): string =>
  name
    .split(/\s+/)
    .map((part) => part.charAt(0))
    .join('');

function toleranceOf(lines: readonly NamedBatchLine[], position: number) {
  const line = lines.find((row) => row.position === position);
  const note = line && (JSON.parse(line.weighing) as WeighingNote);
  return note ? { tolerancePercent: note.tolerancePercent } : {};
}

async function layOutRecord(context: Context, batch: BatchView): Promise<Layout> {
  const house = await workshopDetails(context);
  const moment = (instant: string) =>
    `${localDate(instant, house.timeZone)} ${sayTime(instant, house.timeZone)}`;
  const signed = ({ at, by }: { readonly at: string; readonly by: string }) => ({
    when: moment(at),
    who: by,
  });
  const outcome = batch.outcome;
  if (!outcome) throw new Error(`batch ${batch.number} has ended without an outcome`);
  return buildBatchRecord({
    workshopName: house.name,
    batchNumber: batch.number,
    productName: batch.formulaName,
    revision: String(batch.revisionNumber),
    purpose: batch.purpose,
    outcome: batch.state === 'made' ? 'made' : 'abandoned',
    reason: (await findBatch(context.storage.db, batch.id))?.close_reason ?? '',
    started: signed({ at: batch.startedAt, by: batch.by }),
    ended: signed(outcome),
    // As it was begun: what made it another stands with what was done differently.
    plannedGrams: batch.resizes[0]?.wasGrams ?? batch.plannedGrams,
    inputGrams: outcome.inputGrams,
    yieldGrams: outcome.yieldGrams,
    yieldPercent: percentOf(outcome.yieldGrams, outcome.inputGrams),
    lossGrams: outcome.lossGrams,
    additions: additionsOf(batch).flatMap((row) => listRecorded(row, signed)),
    struck: batch.struck.map(viewStruckEntry(moment)),
    steps: stepsOf(batch).map((step) => ({
      what: stepText(step),
      done: step.done && {
        ...signed(step.done),
        seen: seenOf(step.done),
      },
    })),
    ...(await readStepRecords(context.storage.db, batch, moment)),
    deviations: listMishaps(batch).map((row) => ({ what: row.what, why: row.why, ...signed(row) })),
    runs: await listRecordedRuns(context.storage.db, batch, moment),
    createdAt: context.machine.now(),
  });
}

/** A line of the record for each weighing, with what was asked then, and each substitute by its own name. */
function listRecorded(
  row: Addition,
  signed: (entry: { readonly at: string; readonly by: string }) => { when: string; who: string },
): RecordedAddition[] {
  const { itemName, targetGrams, scaleName, lotNumber, entries } = row;
  const scale = scaleName ?? '';
  if (entries.length === 0)
    return [{ materialName: itemName, lot: lotNumber ?? '', targetGrams, scaleName: scale, done: null }];
  return entries.map((entry, index) => ({
    materialName: entry.substitute ?? itemName,
    lot: entry.lotNumber,
    targetGrams: entry.askedGrams,
    // What it was weighed on, whatever the plan says.
    scaleName: entry.scaleName ?? '',
    done: {
      ...signed(entry),
      actualGrams: entry.actualGrams,
      outside: entry.verdict === 'inside' || index < entries.length - 1 ? null : entry.verdict,
    },
  }));
}

function seenOf({ celsius, minutes, weighed, remark }: NonNullable<Step['done']>): string {
  const words = printWords.batchRecord;
  return words.seen(celsius, minutes, weighed && sayWeighed(weighed), remark) || words.nothingEntered;
}

function sayWeighed(weighed: NonNullable<NonNullable<Step['done']>['weighed']>) {
  const found = weighed.cupMl === null ? null : judgeCup({ ...weighed, cupMl: weighed.cupMl });
  const cup = found?.ok ? found.value : null;
  return {
    netGrams: toText(exact(weighed.grossGrams).minus(weighed.tareGrams)),
    cup:
      cup &&
      printWords.batchRecord.cup(
        toText(cup.densityGramsPerMl.toDecimalPlaces(3)),
        cup.overrunPercent && toText(cup.overrunPercent.toDecimalPlaces(0)),
      ),
  };
}

/** To a tenth of a percent, for reading; nothing went in: nothing came out of it. */
const percentOf = (part: string, whole: string): string =>
  exact(whole).isZero() ? '0' : toText(exact(part).times(100).div(whole).toDecimalPlaces(1));

/** Wrong entries stay readable: of every kind that the page tells, each with why it was struck and by whom. */
const viewStruckEntry =
  (moment: (instant: string) => string) =>
  ({
    what,
    lotNumber,
    actualGrams,
    why,
    at,
    by,
    struckAt,
    struckBy,
  }: BatchView['struck'][number]): StruckEntry => ({
    what:
      actualGrams === null ? what : printWords.batchRecord.struckAddition(what, lotNumber ?? '', actualGrams),
    why: printWords.batchRecord.struckBy(why, moment(struckAt), struckBy),
    when: moment(at),
    who: by,
  });

/** Each run with what was said before its first tin, by whom and when. */
async function listRecordedRuns(db: Reader, batch: BatchView, moment: (instant: string) => string) {
  const words = await listRunReady(
    db,
    batch.runs.map((run) => run.id),
  );
  return batch.runs.map(({ id, number, productName, state }) => {
    const ready = viewReady(words.filter((row) => row.filling_run_id === id));
    return { number, productName, state, ready: sayReady(ready, moment) };
  });
}

function sayReady(
  { area, containers, issued }: ReturnType<typeof viewReady>,
  moment: (instant: string) => string,
): string {
  const signed = ({ at, by }: { readonly at: string; readonly by: string }) => `(${by}, ${moment(at)})`;
  const how = containers && [cleaningWords[containers.method], containers.remark].filter(Boolean).join(', ');
  const { parts } = readyWords;
  const counted =
    issued &&
    [
      parts.tin(issued.tins),
      ...(issued.lids === null ? [] : [parts.lid(issued.lids)]),
      ...(issued.labels === null ? [] : [parts.label(issued.labels)]),
    ].join(', ');
  return [
    ...(area ? [`${readyWords.onPaper.area(area.isClear, area.reason)} ${signed(area)}`] : []),
    ...(containers ? [`${readyWords.onPaper.containers(how ?? '')} ${signed(containers)}`] : []),
    ...(issued ? [`${readyWords.onPaper.issued(counted ?? '')} ${signed(issued)}`] : []),
  ].join('. ');
}
