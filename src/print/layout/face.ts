/** The three weights of Source Sans 3 that labels and papers use. */
export type Weight = 'regular' | 'semibold' | 'bold';

/** Extent of ink in ems: from the pen's start to the right, from the baseline upwards. */
export interface InkExtent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/**
 * What layout needs to know of a font, all in ems. Layout reads no font file: whoever draws hands the metrics in,
 * so that what is measured here and what is drawn there come from the same font.
 */
export interface Face {
  readonly xHeight: number;
  /** How far the pen moves for this text, pair kerning included. */
  advanceOf(text: string): number;
  /** The box of all ink of this text; null where it has none (spaces). */
  inkOf(text: string): InkExtent | null;
  /** Whether the font draws this one character: a glyph with ink, or a space with a width. */
  draws(character: string): boolean;
}

export type Faces = Readonly<Record<Weight, Face>>;

/** Size in millimetres of the em that gives lower-case letters this height. */
export const emForXHeightMm = (xHeightMm: number, face: Face): number => xHeightMm / face.xHeight;
