import { performance } from 'node:perf_hooks';
import { labelPrintRules } from '../src/catalogue/index.ts';
import { must } from '../src/core/problem.ts';
import {
  composePieces,
  type LabelDesign,
  type LabelWording,
  layoutOnSheet,
  layoutPiece,
  plainSheetFor,
} from '../src/print/layout/index.ts';
import { loadCodes, loadFaces, paintDocument } from '../src/print/paint/index.ts';
import type { Figure } from './measure.ts';

const LABELS = 500;
const surface = { shape: 'rectangle', widthMm: 63, heightMm: 70, cornerRadiusMm: 2 } as const;

const design: LabelDesign = {
  market: 'GB',
  languages: ['en'],
  pieces: [
    {
      id: 'lid',
      role: 'whole',
      surface,
      // A number from the examples of the GS1 standards.
      code: { kind: 'digital-link', domain: 'larkfold.example', gtin: '9506000134352' },
    },
  ],
};

const wording: LabelWording = {
  name: 'Cedar and orange body butter',
  function: 'Rich moisturiser for dry skin',
  content: { grams: '80', figureHeightMm: 3 },
  ingredients:
    'Butyrospermum Parkii Butter, Theobroma Cacao Seed Butter, Limnanthes Alba Seed Oil, Oryza Sativa Starch, Tocopherol',
  precautions: 'For external use only.',
  durability: { date: '2027-05-31' },
  batch: 'CO-0418',
  responsible: 'Larkfold Butters, 3 Mill Yard, Hollinsby HX0 0ZZ, United Kingdom',
};

async function paintLabels(): Promise<Uint8Array> {
  const tools = { faces: loadFaces(), codes: loadCodes(), rules: labelPrintRules };
  const pieces = must(composePieces(design, wording)).map((piece) => must(layoutPiece(piece, tools)));
  const run = { title: 'Bench', copies: LABELS };
  return paintDocument(must(layoutOnSheet(pieces, plainSheetFor(surface), run)), '2026-11-26T09:00:00Z');
}

/** From the words to the file, the fonts' first reading included. */
export async function benchLabelPdf(): Promise<readonly Figure[]> {
  const before = process.memoryUsage().rss;
  const start = performance.now();
  const pdf = await paintLabels();
  const seconds = (performance.now() - start) / 1000;
  if (pdf.length < 100_000) throw new Error('the labels were not drawn');
  const megabytes = (process.memoryUsage().rss - before) / 1e6;
  const what = `label-pdf: ${LABELS} labels with a code each`;
  return [
    { name: what, value: seconds, unit: 's', beside: 'aim 2' },
    { name: `${what}, memory on top`, value: Math.max(0, megabytes), unit: 'MB', beside: 'aim 150' },
  ];
}
