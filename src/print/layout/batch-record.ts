import { printWords, stepWords } from '../../words/index.ts';
import { footerOf } from './footer-of.ts';
import type { Paper, PaperBar, PaperCell, PaperPicture, PaperSection, PaperTable } from './paper.ts';

/** What a finished batch leaves on paper. Every moment is a text already, on the workshop's own clock. */
export interface BatchRecord {
  readonly workshopName: string;
  readonly batchNumber: string;
  readonly productName: string;
  readonly revision: string;
  readonly purpose: 'sale' | 'trial';
  readonly outcome: 'made' | 'abandoned';
  /** Why it was given up; '' where it was made. */
  readonly reason: string;
  readonly started: Signed;
  readonly ended: Signed;
  readonly plannedGrams: string;
  readonly inputGrams: string;
  readonly yieldGrams: string;
  readonly yieldPercent: string;
  readonly lossGrams: string;
  readonly additions: readonly RecordedAddition[];
  readonly struck: readonly StruckEntry[];
  readonly steps: readonly RecordedStep[];
  readonly rounds: readonly RecordedRound[];
  readonly yields: readonly RecordedYield[];
  readonly photos: readonly PaperPicture[];
  readonly deviations: readonly RecordedDeviation[];
  readonly runs: readonly RecordedRun[];
  readonly createdAt: string;
}

export interface Signed {
  readonly when: string;
  readonly who: string;
}
export interface RecordedAddition {
  readonly materialName: string;
  readonly lot: string;
  readonly targetGrams: string;
  /** null: it was not weighed in. */
  readonly done: (Signed & { readonly actualGrams: string; readonly outside: 'low' | 'high' | null }) | null;
  readonly scaleName: string;
}
export interface StruckEntry extends Signed {
  readonly what: string;
  readonly why: string;
}
export interface RecordedStep {
  readonly what: string;
  readonly done: (Signed & { readonly seen: string }) | null;
}
export interface RecordedRound extends Signed {
  readonly round: string;
  readonly minutes: string;
  readonly looked: string;
  /** Densities of its cups, g/ml. */
  readonly cups: string;
}
export interface RecordedYield {
  readonly stage: string;
  readonly expectedGrams: string;
  readonly foundGrams: string;
  readonly lossGrams: string;
  readonly lossPercent: string;
}
export interface RecordedDeviation extends Signed {
  readonly what: string;
  readonly why: string;
}
export interface RecordedRun {
  readonly number: string;
  readonly productName: string;
  readonly state: keyof typeof printWords.batchRecord.runStates;
  /** What was said before the first tin: area cleared, containers cleaned, pieces counted out; '': nothing. */
  readonly ready: string;
}

/**
 * The record of one making: what went in, what was done, what was done differently, what came out.
 * Source: ISO 22716:2007, clause 7.2.3 and the records of 7.2.4 to 7.2.6 (materials, lots, weights, steps, deviations).
 */
export function buildBatchRecord(record: BatchRecord): Paper {
  const words = printWords.batchRecord;
  const banner = bannerOf(record);
  return {
    title: words.titleOf(record.batchNumber),
    subtitle: record.productName,
    ...(banner !== '' && { banner }),
    facts: factsOf(record),
    tables: [
      additionsTable(record.additions),
      ...(record.struck.length === 0 ? [] : [struckTable(record.struck)]),
      ...(record.steps.length === 0 ? [] : [stepsTable(record.steps)]),
      ...(record.rounds.length === 0 ? [] : [roundsTable(record.rounds)]),
      deviationsTable(record.deviations),
      ...(record.runs.length === 0 ? [] : [runsTable(record.runs)]),
    ],
    sections: [
      ...(record.yields.length === 0 ? [] : [yieldsOf(record.yields)]),
      ...(record.photos.length === 0 ? [] : [photosOf(record.photos)]),
    ],
    notes: [],
    signatures: words.signatures,
    footer: footerOf(record.workshopName, words.titleOf(record.batchNumber)),
    createdAt: record.createdAt,
  };
}

const bannerOf = ({ purpose, outcome, reason }: BatchRecord): string =>
  [
    ...(purpose === 'trial' ? [printWords.weighingSheet.trial] : []),
    ...(outcome === 'abandoned' ? [printWords.batchRecord.abandoned(reason)] : []),
  ].join(' ');

function factsOf(record: BatchRecord): Paper['facts'] {
  const { weighingSheet, batchRecord: words } = printWords;
  const { grams } = weighingSheet;
  return [
    [weighingSheet.batch, record.batchNumber],
    [weighingSheet.revision, record.revision],
    [weighingSheet.purpose, weighingSheet.purposes[record.purpose]],
    [words.started, words.by(record.started.when, record.started.who)],
    [words.ended[record.outcome], words.by(record.ended.when, record.ended.who)],
    [words.planned, grams(record.plannedGrams)],
    [words.input, grams(record.inputGrams)],
    [words.yield, words.yieldOf(record.yieldGrams, record.yieldPercent)],
    [words.loss, grams(record.lossGrams)],
  ];
}

function additionsTable(additions: readonly RecordedAddition[]): PaperTable {
  const words = printWords.batchRecord;
  const { columns } = words;
  return {
    heading: words.additions,
    columns: [
      { title: columns.material, align: 'left' },
      { title: columns.lot, align: 'left' },
      { title: columns.target, align: 'right' },
      { title: columns.actual, align: 'right', isStrong: true },
      { title: columns.scale, align: 'left' },
      { title: columns.when, align: 'left' },
      { title: columns.who, align: 'left' },
    ],
    rows: additions.map(additionRow),
  };
}

function additionRow({ materialName, lot, targetGrams, scaleName, done }: RecordedAddition): PaperCell[] {
  const { outside, notWeighed } = printWords.batchRecord;
  if (done === null) return [materialName, lot, targetGrams, notWeighed, scaleName, '', ''];
  const name = done.outside ? { text: materialName, remark: outside[done.outside] } : materialName;
  return [name, lot, targetGrams, done.actualGrams, scaleName, done.when, done.who];
}

function struckTable(struck: readonly StruckEntry[]): PaperTable {
  const { struck: heading, struckColumns: columns } = printWords.batchRecord;
  return {
    heading,
    columns: [
      { title: columns.what, align: 'left' },
      { title: columns.why, align: 'left' },
      { title: columns.when, align: 'left' },
      { title: columns.who, align: 'left' },
    ],
    rows: struck.map(({ what, why, when, who }) => [what, why, when, who]),
  };
}

function stepsTable(steps: readonly RecordedStep[]): PaperTable {
  const { method, stepColumns: columns, notRecorded } = printWords.batchRecord;
  return {
    heading: method,
    columns: [
      { title: columns.step, align: 'left' },
      { title: columns.seen, align: 'left' },
      { title: columns.when, align: 'left' },
      { title: columns.who, align: 'left' },
    ],
    rows: steps.map(({ what, done }) =>
      done === null ? [what, notRecorded, '', ''] : [what, done.seen, done.when, done.who],
    ),
  };
}

function roundsTable(rounds: readonly RecordedRound[]): PaperTable {
  const { rounds: heading, roundColumns: columns } = stepWords.print;
  return {
    heading,
    columns: [
      { title: columns.round, align: 'left' },
      { title: columns.ran, align: 'right' },
      { title: columns.looked, align: 'left' },
      { title: columns.cups, align: 'left' },
      { title: columns.when, align: 'left' },
      { title: columns.who, align: 'left' },
    ],
    rows: rounds.map(({ round, minutes, looked, cups, when, who }) => [
      round,
      minutes,
      looked,
      cups,
      when,
      who,
    ]),
  };
}

/** Bars to one scale, as on the page, and the same as a table. */
function yieldsOf(yields: readonly RecordedYield[]): PaperSection {
  const most = Math.max(...yields.flatMap((each) => [Number(each.expectedGrams), Number(each.foundGrams)]));
  return {
    heading: stepWords.print.yields,
    level: 1,
    // One alone is compared with nothing.
    bars: most > 0 && yields.length > 1 ? yields.map((each) => barOf(each, most)) : [],
    tables: [yieldsTable(yields)],
  };
}

const barOf = (each: RecordedYield, most: number): PaperBar => ({
  name: each.stage,
  says: stepWords.yields.barOf(
    each.stage,
    printWords.weighingSheet.grams(each.foundGrams),
    printWords.weighingSheet.grams(each.lossGrams),
    each.lossPercent,
  ),
  foundShare: Number(each.foundGrams) / most,
  lostShare: Math.max(0, Number(each.expectedGrams) - Number(each.foundGrams)) / most,
});

function yieldsTable(yields: readonly RecordedYield[]): PaperTable {
  const { yieldColumns: columns } = stepWords.print;
  return {
    columns: [
      { title: columns.stage, align: 'left' },
      { title: columns.expected, align: 'right' },
      { title: columns.found, align: 'right', isStrong: true },
      { title: columns.loss, align: 'right' },
      { title: columns.percent, align: 'right' },
    ],
    rows: yields.map(({ stage, expectedGrams, foundGrams, lossGrams, lossPercent }) => [
      stage,
      expectedGrams,
      foundGrams,
      lossGrams,
      lossPercent,
    ]),
  };
}

/** Two and more fit a page: large ones are looked at on the bench. Common practice, no source. */
const PHOTO_HIGH_MM = 62;

const photosOf = (photos: readonly PaperPicture[]): PaperSection => ({
  heading: stepWords.print.photos,
  level: 1,
  source: stepWords.print.photosSource,
  pictures: photos.map((photo) => ({ ...photo, highestMm: PHOTO_HIGH_MM })),
});

function deviationsTable(deviations: readonly RecordedDeviation[]): PaperTable {
  const { deviations: heading, deviationColumns: columns } = printWords.batchRecord;
  return {
    heading,
    columns: [
      { title: columns.what, align: 'left' },
      { title: columns.why, align: 'left' },
      { title: columns.when, align: 'left' },
      { title: columns.who, align: 'left' },
    ],
    rows: deviations.map(({ what, why, when, who }) => [what, why, when, who]),
  };
}

function runsTable(runs: readonly RecordedRun[]): PaperTable {
  const { runs: heading, runColumns: columns, runStates } = printWords.batchRecord;
  return {
    heading,
    columns: [
      { title: columns.number, align: 'left' },
      { title: columns.product, align: 'left' },
      { title: columns.state, align: 'left' },
      { title: columns.ready, align: 'left' },
    ],
    rows: runs.map(({ number, productName, state, ready }) => [number, productName, runStates[state], ready]),
  };
}
