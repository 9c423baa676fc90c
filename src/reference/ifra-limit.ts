import type { SourcedRow } from './sourced-row.ts';

export type IfraCategory =
  | '1' | '2' | '3' | '4' | '5A' | '5B' | '5C' | '5D' | '6' | '7A' | '7B' | '8' | '9'
  | '10A' | '10B' | '11A' | '11B' | '12';

/**
 * A number: percent by weight in the finished product, over all sources; the figure itself is allowed.
 * `no-restriction`: the Standard sets none in this category. `unknown`: not confirmed, never free.
 */
export type IfraCategoryLimit = number | 'no-restriction' | 'prohibited' | 'unknown';

export interface IfraLimit extends SourcedRow {
  readonly name: string;
  readonly aliases?: readonly string[];
  readonly cas: readonly string[];
  /** Absent: the row holds for every part and process. */
  readonly plantPart?: readonly string[];
  readonly process?: readonly string[];
  readonly foundIn?: readonly string[];
  /** Absent: not known whether a Standard exists. */
  readonly kind?: 'restriction' | 'prohibition' | 'specification' | 'phototoxic';
  /** `phototoxic`: concentration over limit, added over all rows of the group, at most 1. `moss`: counted together. */
  readonly sumGroup?: 'phototoxic' | 'moss';
  /** The limit does not hold for rinse-off products, whatever the category. */
  readonly rinseOffFree?: boolean;
  readonly limits: Readonly<Record<IfraCategory, IfraCategoryLimit>>;
  /** Rule for the raw material: needs its certificate. */
  readonly specification?: {
    readonly basis: 'raw-material';
    readonly quantity: 'max' | 'min';
    readonly asWhat: string;
    readonly value: number;
    readonly unit: string;
    readonly strict: boolean;
  };
  /** Amendment whose values are given; absent: no values given. */
  readonly edition?: '49';
  readonly unchangedIn50?: boolean;
  /** Read as unchanged in the index of the 51st Amendment; absent: to be confirmed against the current Standard. */
  readonly unchangedIn51?: boolean;
  readonly note?: string;
}

export interface IfraCategoryRow extends SourcedRow {
  readonly id: IfraCategory;
  readonly covers: string;
  /** What makers sell in it. */
  readonly makerProducts?: string;
}

export interface IfraRule extends SourcedRow {
  readonly name: string;
  readonly text: string;
}
