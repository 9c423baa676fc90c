import type { FaceSize } from './outline.ts';
import type { Placed } from './placed.ts';

/** What stands on a label, in the words that are to be printed. Which words the law asks for is decided before. */
export interface Label {
  readonly front: LabelFront;
  readonly back: LabelBack;
}

export interface LabelFront {
  readonly size: FaceSize;
  readonly productName: string;
  readonly brandName?: string;
  readonly functionText?: string;
  /** Such as `80 g`. */
  readonly declaredContentText: string;
  /** Least height of its figures by law, in millimetres. */
  readonly figureHeightMm: number;
}

export interface LabelBack {
  readonly size: FaceSize;
  /** Without its heading, which the layout sets in bold before it. */
  readonly ingredientsText: string;
  /** Without the word "Batch", which the layout sets before it. */
  readonly batchNumber: string;
  /** Such as `Best used before the end of 05/2027`. Either this or `openedMonths` must be there. */
  readonly durabilityText?: string;
  /** Draws the open jar with this number of months. */
  readonly openedMonths?: number;
  readonly precautionsText?: string;
  readonly responsiblePersonText: string;
  readonly originText?: string;
  readonly otherLines?: readonly string[];
}

export interface FaceLayout {
  readonly face: 'front' | 'back';
  readonly size: FaceSize;
  /** In millimetres from the top left of the face. */
  readonly items: readonly Placed[];
  /** Height of the lower-case letters in the smallest text of this face. */
  readonly smallestXHeightMm: number;
}

export interface LabelLayout {
  readonly front: FaceLayout;
  readonly back: FaceLayout;
  /** As drawn: of the lowest digit that occurs in the declared content. */
  readonly figureHeightMm: number;
}
