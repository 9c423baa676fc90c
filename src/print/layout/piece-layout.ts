import type { Problem } from '../../core/problem.ts';
import type { CodeMaker } from './code-maker.ts';
import type { Faces } from './face.ts';
import type { FaceSize } from './outline.ts';
import type { Placed } from './placed.ts';
import type { PrintRules } from './print-rules.ts';
import type { Surface, SurfaceRole } from './surface.ts';

/** What layout needs of the outside: metrics, codes as bars and squares, and the published heights. */
export interface LayoutTools {
  readonly faces: Faces;
  readonly codes: CodeMaker;
  readonly rules: PrintRules;
}

/** A piece at true size, in millimetres from its own top left. */
export interface PieceLayout {
  readonly id: string;
  readonly role: SurfaceRole;
  readonly surface: Surface;
  /** What is cut: a wrap is a rectangle as long as circumference and overlap. */
  readonly size: FaceSize;
  readonly items: readonly Placed[];
  /** Height of the lower-case letters in the smallest text. */
  readonly smallestXHeightMm: number;
  /**
   * As drawn, of the lowest digit of the declared content; in the United States of its lower-case letters. Null where it stands
   * elsewhere.
   */
  readonly figureHeightMm: number | null;
  readonly eMarkHeightMm: number | null;
  /** Of the code: the width of its narrowest bar or square. */
  readonly moduleMm: number | null;
  /** Words for what is drawn, by element, for whoever has the page read out. */
  readonly alts: Readonly<Record<string, string>>;
  /** Beyond the cut, where there is artwork. */
  readonly bleedMm: number;
  /** What does not keep it from being printed but should be known, such as a coarse picture. */
  readonly notes: readonly Problem[];
}
