export {
  type BatchRecord,
  buildBatchRecord,
  type RecordedAddition,
  type RecordedStep,
  type StruckEntry,
} from './batch-record.ts';
export { checkSheet, judgeFit } from './check-sheet.ts';
export type { BarWidths, CodeMaker, QrSquares } from './code-maker.ts';
export { composePieces } from './compose-pieces.ts';
export { ELEMENTS_OF_ROLE } from './elements-of-role.ts';
export type { Face, Faces, InkExtent, Weight } from './face.ts';
export { faceOfSurface } from './face-of-surface.ts';
export {
  type Artwork,
  type CodeWish,
  type DesignPiece,
  LABEL_ELEMENTS,
  type LabelDesign,
  type LabelElementKey,
  type LabelPiece,
  type LabelWording,
  type LeafletDesign,
  type LetterLimits,
  MOVABLE_ELEMENTS,
  type MovableElement,
  type PieceCode,
  type PieceText,
  type PrintMarket,
  type TextIn,
} from './label-design.ts';
export { INSET_MM, SMALLEST_X_HEIGHT_MM } from './label-rules.ts';
export { layoutCutSheet, MOST_COPIES } from './layout-cut-sheet.ts';
export { layoutOnSheet, placeOn, positionAfter } from './layout-on-sheet.ts';
export { layoutPaper } from './layout-paper.ts';
export { layoutPiece } from './layout-piece.ts';
export { buildLetter, type SupplierLetter } from './letter.ts';
export { type FaceSize, heightOf, widthOf } from './outline.ts';
export { type Addressee, buildPackingSlip, type PackingLine, type PackingSlip } from './packing-slip.ts';
export type { Paper, PaperCell, PaperColumn, PaperPicture, PaperSection, PaperTable } from './paper.ts';
export { buildPickList, type PickLine, type PickList } from './pick-list.ts';
export type { LayoutTools, PieceLayout } from './piece-layout.ts';
export { pieceToSvg } from './piece-to-svg.ts';
export {
  type Box,
  type Page,
  type Part,
  type Placed,
  type PlacedBoxes,
  type PlacedImage,
  type PlacedPath,
  type PlacedRule,
  type PlacedText,
  type PrintDocument,
  type Tone,
  toneColour,
} from './placed.ts';
export { plainSheetFor } from './plain-sheet.ts';
export type { PrintRules } from './print-rules.ts';
export { readImageSize } from './read-image-size.ts';
export type { SheetHeading } from './sheet-frame.ts';
export type { SheetGeometry, SheetRun } from './sheet-geometry.ts';
export { layoutSheetTrial } from './sheet-trial.ts';
export type { Surface, SurfaceRole } from './surface.ts';
export {
  buildWeighingSheet,
  type DoneAlready,
  type WeighingRow,
  type WeighingSheet,
} from './weighing-sheet.ts';
export { LEAFLET_ID } from './wish-pieces.ts';
