import type { AnswerOf } from '../../api/shapes.ts';

export type Label = AnswerOf<'getRunLabel'>;
export type Piece = Label['pieces'][number];
export type LabelNote = Label['notes'][number];
export type LabelDesign = AnswerOf<'getLabelDesign'>;
export type DesignDetails = LabelDesign['details'];
export type LabelSheet = AnswerOf<'listLabelSheets'>[number];
export type SheetGeometry = LabelSheet['details']['geometry'];
export type LabelCounts = AnswerOf<'getLabelCounts'>;
