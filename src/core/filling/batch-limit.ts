import type { ExactInput } from '../quantity/index.ts';

/** What is there, or what the bowl holds, of something that takes a share of the batch's mass. */
export interface MassLimit {
  readonly kind: 'material' | 'base' | 'bowl';
  readonly key: string;
  readonly name: string;
  readonly availableGrams: ExactInput;
  /** Share of the batch, above 0 and at most 1; the bowl takes all of it: 1. */
  readonly shareOfBatch: ExactInput;
}

/** Packaging that is there; a product that does not use it does not stand in `perUnit`. */
export interface PieceLimit {
  readonly kind: 'tins' | 'lids' | 'labels';
  readonly key: string;
  readonly name: string;
  readonly availablePieces: number;
  /** Pieces for one filled unit, by the key of the line. */
  readonly perUnit: Readonly<Record<string, number>>;
}

export type BatchLimit = MassLimit | PieceLimit;

/** Which limit binds; `order`: none does, and all that was wanted can be made. */
export interface NamedLimit {
  readonly kind: BatchLimit['kind'] | 'order';
  readonly key: string | null;
  readonly name: string | null;
}

export const isMassLimit = (limit: BatchLimit): limit is MassLimit => 'availableGrams' in limit;

export const nameOf = ({ kind, key, name }: BatchLimit): NamedLimit => ({ kind, key, name });

export const NO_LIMIT: NamedLimit = { kind: 'order', key: null, name: null };
