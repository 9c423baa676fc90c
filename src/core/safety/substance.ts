import type { ExactInput, Quotient } from '../quantity/index.ts';

/** What is known of one substance or natural material in a composition. */
export interface Substance {
  readonly name: string;
  readonly cas?: string;
  /**
   * Other names, and CAS numbers, that its papers give it: each is looked up whatever the name says, and the strictest
   * finding counts. `cas` by itself is looked up only where no table knows the name.
   */
  readonly alsoNames?: readonly string[] | undefined;
  readonly alsoCas?: readonly string[] | undefined;
  /** flower, leaf, peel, seed, root, wood, bark, herb, fruit, resin, whole. */
  readonly plantPart?: string;
  /** expressed, distilled, absolute, concrete, furocoumarin-free, rectified, co2, extract, crude. */
  readonly process?: string;
  /** `natural`: brought in by a natural material; `added`: added as such. Absent: not told, both rules are taken. */
  readonly origin?: 'natural' | 'added';
}

/** Every CAS number that the papers give it. */
export const numbersOfSubstance = ({ cas, alsoCas = [] }: Substance): readonly string[] => [
  ...new Set([...(cas === undefined ? [] : [cas]), ...alsoCas]),
];

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

const listKey = (more: readonly string[] | undefined): string => (more === undefined ? '' : more.join('+'));

export const substanceKey = (one: Substance): string =>
  `${one.name}|${one.cas ?? ''}|${one.plantPart ?? ''}|${one.process ?? ''}|${one.origin ?? ''}|${listKey(one.alsoNames)}|${listKey(one.alsoCas)}`;
