import type { ExactInput, Quotient } from '../quantity/index.ts';

/** What is known of one substance or natural material in a composition. */
export interface Substance {
  readonly name: string;
  readonly cas?: string;
  /** flower, leaf, peel, seed, root, wood, bark, herb, fruit, resin, whole. */
  readonly plantPart?: string;
  /** expressed, distilled, absolute, concrete, furocoumarin-free, rectified, co2, extract, crude. */
  readonly process?: string;
  /** `natural`: brought in by a natural material; `added`: added as such. Absent: not told, both rules are taken. */
  readonly origin?: 'natural' | 'added';
}

/** Where an amount comes from; told with the verdict. */
export interface Provenance {
  /** How the amount is known. */
  readonly confidence?: string;
  readonly fromMaterials?: readonly string[];
  /** In percent; shown beside, nothing is judged on it. */
  readonly typicalPercent?: ExactInput | Quotient;
}

/** In percent by mass of the finished product. */
export interface Contribution extends Substance, Provenance {
  readonly percent: ExactInput;
}
