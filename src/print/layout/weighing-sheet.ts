import { printWords } from '../../words/index.ts';
import { footerOf } from './footer-of.ts';
import type { Paper, PaperCell, PaperColumn, PaperTable } from './paper.ts';
import { writeDay } from './write-day.ts';

/** What the bench needs on paper to make one batch. Figures are texts, already rounded to what their scale shows. */
export interface WeighingSheet {
  readonly workshopName: string;
  readonly batchNumber: string;
  readonly productName: string;
  readonly revision: string;
  readonly purpose: 'sale' | 'trial';
  /** ISO day, where one is planned. */
  readonly makeOn?: string;
  readonly batchGrams: string;
  readonly rows: readonly WeighingRow[];
  readonly steps?: readonly WeighingStep[];
  readonly cautions: readonly string[];
  readonly createdAt: string;
}

/** What is done already when the sheet is printed: whoever goes on by paper does nothing twice. */
export interface DoneAlready {
  readonly what: string;
  readonly when: string;
  readonly who: string;
}

export interface WeighingStep {
  readonly what: string;
  readonly done?: DoneAlready;
}

export interface WeighingRow {
  readonly stage: string;
  readonly materialName: string;
  readonly lot: string;
  readonly targetGrams: string;
  readonly scaleName: string;
  readonly tolerancePercent?: string;
  readonly warning?: string;
  readonly done?: DoneAlready;
}

/** One table a stage, in the order in which the stages come, with room for the weight and the initials of each addition. */
export function buildWeighingSheet(sheet: WeighingSheet): Paper {
  const words = printWords.weighingSheet;
  const stages = [...new Set(sheet.rows.map(({ stage }) => stage))];
  const steps = sheet.steps ?? [];
  return {
    title: words.titleOf(sheet.batchNumber),
    subtitle: sheet.productName,
    ...(sheet.purpose === 'trial' ? { banner: words.trial } : {}),
    facts: factsOf(sheet),
    cautions: sheet.cautions,
    tables: [
      ...(stages.length === 0 ? [stageTable([], undefined)] : []),
      ...stages.map((stage) =>
        stageTable(
          sheet.rows.filter((row) => row.stage === stage),
          stage,
        ),
      ),
      ...(steps.length === 0 ? [] : [methodTable(steps)]),
    ],
    writingSpaces: [{ label: words.differently, lines: 3 }],
    notes: [words.correct],
    signatures: words.signatures,
    footer: footerOf(sheet.workshopName, words.titleOf(sheet.batchNumber)),
    createdAt: sheet.createdAt,
  };
}

function factsOf(sheet: WeighingSheet): Paper['facts'] {
  const words = printWords.weighingSheet;
  return [
    [words.batch, sheet.batchNumber],
    [words.size, words.grams(sheet.batchGrams)],
    [words.purpose, words.purposes[sheet.purpose]],
    [words.revision, sheet.revision],
    [words.makeOn, sheet.makeOn === undefined ? printWords.paper.notPlanned : writeDay(sheet.makeOn)],
  ];
}

/** Fixed widths, so that the columns of all stages stand under one another. */
function stageColumns(): PaperColumn[] {
  const { columns } = printWords.weighingSheet;
  return [
    { title: columns.material, align: 'left' },
    { title: columns.lot, align: 'left', widthMm: 19 },
    { title: columns.target, align: 'right', widthMm: 22, isStrong: true },
    { title: columns.tolerance, align: 'right', widthMm: 11 },
    { title: columns.scale, align: 'left', widthMm: 18 },
    { title: columns.actual, align: 'left', widthMm: 23, isForHand: true },
    { title: columns.initials, align: 'left', widthMm: 14, isForHand: true },
  ];
}

const stageTable = (rows: readonly WeighingRow[], heading: string | undefined): PaperTable => ({
  ...(heading === undefined ? {} : { heading }),
  columns: stageColumns(),
  rows: rows.map(rowOf),
});

const rowOf = (row: WeighingRow): PaperCell[] => [
  row.warning === undefined ? row.materialName : { text: row.materialName, remark: row.warning },
  row.lot,
  row.targetGrams,
  row.tolerancePercent ?? '',
  row.scaleName,
  ...handCells(row.done),
];

/** To be written in by hand, or what stands already. */
const handCells = (done: DoneAlready | undefined): PaperCell[] =>
  done === undefined ? ['', ''] : [{ text: done.what, remark: done.when }, done.who];

function methodTable(steps: readonly WeighingStep[]): PaperTable {
  const words = printWords.weighingSheet;
  return {
    heading: words.method,
    columns: [
      { title: words.steps.number, align: 'left', widthMm: 7, isStrong: true },
      { title: words.steps.step, align: 'left' },
      { title: words.steps.seen, align: 'left', widthMm: 42, isForHand: true },
      { title: words.steps.initials, align: 'left', widthMm: 14, isForHand: true },
    ],
    rows: steps.map((step, index) => [String(index + 1), step.what, ...handCells(step.done)]),
  };
}
