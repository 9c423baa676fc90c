import type { Block } from './block.ts';
import type { Align } from './flow-blocks.ts';
import type { FaceSize } from './outline.ts';
import type { Fixture } from './symbol-row.ts';

/** A part of a piece that is read as one: all of it, or the front third of a strip round a jar. */
export interface Panel {
  readonly size: FaceSize;
  readonly insetMm: number;
  readonly align: Align;
  readonly isCentredInHeight: boolean;
  /** Largest first. */
  readonly stepCount: number;
  blocksAt(step: number): readonly Block[];
  /** What must stand in the bottom of the panel: the net contents in the United States. */
  footAt?(step: number): Block;
  /** Symbols and codes, side by side. */
  readonly row: readonly Fixture[];
}
