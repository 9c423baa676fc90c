import type { Weight } from './face.ts';

/** Black prints sharp on any printer; soft is for captions, line for rules that only guide the eye, paper for white under texts. */
export type Tone = 'ink' | 'soft' | 'line' | 'paper';

export const toneColour: Readonly<Record<Tone, string>> = {
  ink: '#000000',
  soft: '#57615b',
  line: '#b9ae98',
  paper: '#ffffff',
};

/** Edges in millimetres from the left and the top of face or page. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A node of the document's structure, as a screen reader walks it (ISO 32000-1, 14.8.4: standard structure types). */
export interface Part {
  readonly type: 'Document' | 'Sect' | 'H1' | 'H2' | 'H3' | 'P' | 'Table' | 'TR' | 'TH' | 'TD' | 'Figure';
  readonly alt?: string;
  readonly scope?: 'Column';
  readonly children: readonly Part[];
}

interface Drawn {
  readonly tone: Tone;
  /** Field path of what is shown, such as `front.productName`. */
  readonly element: string;
  /** The structure it belongs to; without one it is decoration. */
  readonly part?: Part;
  /** Turned by a quarter clockwise about this point; its own places are those before it is turned. */
  readonly turnedAbout?: { readonly xMm: number; readonly yMm: number };
}

export interface PlacedText extends Drawn {
  readonly kind: 'text';
  readonly text: string;
  readonly weight: Weight;
  /** The em in millimetres. */
  readonly sizeMm: number;
  readonly xMm: number;
  readonly baselineMm: number;
  readonly widthMm: number;
  readonly ink: Box;
  /** The line ended at a space: whoever reads the text aloud or copies it needs one there. */
  readonly hasSpaceAfter: boolean;
}

export interface PlacedRule extends Drawn {
  readonly kind: 'rule';
  readonly fromMm: readonly [number, number];
  readonly toMm: readonly [number, number];
  readonly thicknessMm: number;
}

/** An outline in SVG path commands, in millimetres from its own origin. */
export interface PlacedPath extends Drawn {
  readonly kind: 'path';
  readonly d: string;
  readonly xMm: number;
  readonly yMm: number;
  /** Null: filled. */
  readonly strokeMm: number | null;
}

/** Filled rectangles that belong together, such as the squares of a code, from an origin of their own. */
export interface PlacedBoxes extends Drawn {
  readonly kind: 'boxes';
  /** Left, top, width, height. One list drawn in many places is kept once in a file. */
  readonly boxes: readonly (readonly [number, number, number, number])[];
  readonly xMm: number;
  readonly yMm: number;
}

/** A picture, of which only what lies inside the clip is seen. */
export interface PlacedImage extends Drawn {
  readonly kind: 'image';
  readonly bytes: Uint8Array;
  readonly type: 'png' | 'jpeg';
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** SVG path commands, in millimetres from the clip's own origin. */
  readonly clip: { readonly d: string; readonly xMm: number; readonly yMm: number };
}

export type Placed = PlacedText | PlacedRule | PlacedPath | PlacedBoxes | PlacedImage;

export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly items: readonly Placed[];
}

export interface PrintDocument {
  readonly title: string;
  readonly pages: readonly Page[];
  readonly structure: Part;
}

export function moveBy<T extends Placed>(item: T, dx: number, dy: number): T;
export function moveBy(item: Placed, dx: number, dy: number): Placed {
  if (item.kind === 'path' || item.kind === 'boxes')
    return { ...item, xMm: item.xMm + dx, yMm: item.yMm + dy };
  if (item.kind === 'image') {
    const clip = { ...item.clip, xMm: item.clip.xMm + dx, yMm: item.clip.yMm + dy };
    return { ...item, xMm: item.xMm + dx, yMm: item.yMm + dy, clip };
  }
  if (item.kind === 'rule') {
    const moved = ([x, y]: readonly [number, number]): [number, number] => [x + dx, y + dy];
    return { ...item, fromMm: moved(item.fromMm), toMm: moved(item.toMm) };
  }
  const { left, top, right, bottom } = item.ink;
  const ink = { left: left + dx, top: top + dy, right: right + dx, bottom: bottom + dy };
  return { ...item, xMm: item.xMm + dx, baselineMm: item.baselineMm + dy, ink };
}
