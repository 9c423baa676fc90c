import type { UseCases } from '../use-case.ts';
import { attachLabelArtwork } from './attach-artwork.ts';
import { countLabels, getLabelCounts } from './count-labels.ts';
import { getRunLabel } from './get-run-label.ts';
import { getSheetTrialPdf, listLabelSheets, saveLabelSheet } from './label-sheets.ts';
import { listLabelLacks } from './list-label-lacks.ts';
import { previewLabel } from './preview-label.ts';
import { getLabelPrintPdf, printRunLabels } from './print-run-labels.ts';
import { getLabelDesign, listLabelDesigns, saveLabelDesign } from './save-label-design.ts';

export type { ComposedPieces } from './compose-pieces.ts';
export { findOutdatedPrints } from './find-outdated-prints.ts';
export { readPrintedDesign } from './printed-design.ts';
export { composeRunLabel } from './run-label.ts';

export const labelUseCases = {
  getRunLabel,
  printRunLabels,
  getLabelPrintPdf,
  getLabelCounts,
  countLabels,
  listLabelDesigns,
  getLabelDesign,
  saveLabelDesign,
  previewLabel,
  listLabelLacks,
  attachLabelArtwork,
  listLabelSheets,
  saveLabelSheet,
  getSheetTrialPdf,
} satisfies UseCases<
  | 'getRunLabel'
  | 'printRunLabels'
  | 'getLabelPrintPdf'
  | 'getLabelCounts'
  | 'countLabels'
  | 'listLabelDesigns'
  | 'getLabelDesign'
  | 'saveLabelDesign'
  | 'previewLabel'
  | 'listLabelLacks'
  | 'attachLabelArtwork'
  | 'listLabelSheets'
  | 'saveLabelSheet'
  | 'getSheetTrialPdf'
>;
