import type { ExactInput } from '../quantity/index.ts';
import type { LotToUse } from './choose-first-expiry.ts';

/** A lot that may serve an order; what is promised to other orders is already taken off its quantity. */
export interface PromiseLot extends LotToUse {
  /** A base that still sets: instants from which it may be firm, at the earliest and at the longest. */
  readonly firm: { readonly from: string; readonly to: string } | null;
  /** Filled tins that lack only a person's release: counted, and said so. */
  readonly awaitsRelease: boolean;
}

export interface PromisePart {
  readonly itemId: string;
  /** For each gram or piece that is made: one tin, one lid, 36.2 g of the mixture. */
  readonly amount: ExactInput;
  /** On top, once for the whole making: a retained sample. */
  readonly extra?: ExactInput;
}

/** How an item is made, where it is made at all. */
export interface PromiseMaking {
  readonly parts: readonly PromisePart[];
  readonly minutes: number;
  readonly minutesForEach?: number;
  /** How long it has to rest before the next step, at the best and at the longest. */
  readonly settingHours: { readonly least: number; readonly most: number } | null;
}

export interface PromiseItem {
  readonly itemId: string;
  readonly name: string;
  readonly unit: 'g' | 'pieces';
  readonly lots: readonly PromiseLot[];
  /** null: it is bought. */
  readonly making: PromiseMaking | null;
  /** Days from buying to having it; null: nobody has said. */
  readonly leadDays: number | null;
}

export interface PromiseQuestion {
  /** Instant: `2026-11-26T08:05:00Z`. */
  readonly now: string;
  /** IANA name: whose mornings and days are meant. */
  readonly timeZone: string;
  readonly wantedBy: string;
  /** When hands are at work: `08:00` to `18:00`. null: at any hour. */
  readonly workday: { readonly from: string; readonly to: string } | null;
  readonly needs: readonly { readonly itemId: string; readonly quantity: ExactInput }[];
  /** Products, mixtures, bases, materials, packaging: everything that the needs lead to. */
  readonly items: readonly PromiseItem[];
}

/** A sentence as data; words/ says it. Dates and instants stand in ISO text. */
export interface PromiseSaying {
  readonly code: string;
  readonly parameters: Readonly<Record<string, string | number | boolean | null>>;
}

export interface PromiseShort {
  readonly itemId: string;
  readonly name: string;
  readonly unit: 'g' | 'pieces';
  readonly need: string;
  readonly have: string;
  readonly short: string;
  readonly leadDays: number | null;
}

export interface PromiseStep {
  readonly what: PromiseSaying;
  readonly itemId: string;
  /** Where it is about one lot that sets. */
  readonly lot: string | null;
  /** Instants; null: not known before something is bought. */
  readonly from: string | null;
  readonly to: string | null;
}

export interface PromiseAnswer {
  /** Judged on the longest setting time, and only on what is here. */
  readonly canGoOutBy: boolean;
  /**
   * `if-bought`: what has to be bought comes in time by its lead days, ordered today. `not-known`: something has to be
   * bought of which nobody has said how long that takes.
   */
  readonly answer: 'yes' | 'if-bought' | 'no' | 'not-known';
  readonly sentence: PromiseSaying;
  /** First day it can go: at the best and at the longest setting time. null: not before something is bought, and nobody said how long that takes. */
  readonly earliest: {
    readonly from: string;
    readonly to: string;
    /** Something has to be bought, and the dates count its lead days. */
    readonly dependsOnSupplier: boolean;
  } | null;
  readonly shortOf: readonly PromiseShort[];
  readonly steps: readonly PromiseStep[];
  /** When each item is at hand: instants, at the best and at the longest. null: not known before something is bought. */
  readonly atHand: ReadonlyMap<string, { readonly from: string | null; readonly to: string | null }>;
  readonly reasons: readonly PromiseSaying[];
}
