import type { SourcedRow } from './sourced-row.ts';

export type RestrictionMarket = 'EU' | 'NI' | 'GB';
export type RestrictionUse = 'leave-on' | 'rinse-off';
export type BodyPart =
  | 'body' | 'face' | 'lip' | 'hand' | 'eye' | 'hair' | 'scalp' | 'oral' | 'nail' | 'foot' | 'nappy-area';
export type ProductType =
  | 'fine-fragrance' | 'eau-de-toilette' | 'fragrance-cream' | 'hydroalcoholic-fragrance' | 'fragrance'
  | 'body-lotion' | 'body-lotion-spray' | 'face-cream' | 'hand-cream' | 'face-make-up' | 'eye-make-up'
  | 'make-up-remover' | 'eye-shadow' | 'mascara' | 'eyeliner' | 'lipstick' | 'lip-product'
  | 'loose-face-powder' | 'powder' | 'hair-spray' | 'hair-conditioner' | 'hair-straightener' | 'shampoo'
  | 'shower-gel' | 'bath-product' | 'hand-wash' | 'face-wash' | 'soap' | 'deodorant' | 'roll-on-deodorant'
  | 'deodorant-spray' | 'depilatory' | 'nail-cuticle-solvent' | 'callus-softener' | 'toothpaste' | 'mouthwash'
  | 'mouth-spray' | 'sun-protection' | 'uv-exposure' | 'bronzing';
export type RestrictionCondition =
  | 'not-oral' | 'used-as-fragrance' | 'lung-exposure' | 'aerosol-spray' | 'with-nitrosating-agents'
  | 'consumer-use' | 'professional-use' | 'ph-adjuster' | 'intended-for-children' | 'single-ester'
  | 'ester-mixture' | 'released-formaldehyde-over-threshold' | 'adults-iso-4730-no-spray'
  | 'trace-avoidable-or-unsafe';

/** One rule of a row: what holds for whom, from when. An absent field has the meaning that its comment gives. */
export interface RestrictionRule extends SourcedRow {
  readonly markets: readonly RestrictionMarket[];
  /** Absent: both. */
  readonly use?: RestrictionUse;
  /** Absent: every part. */
  readonly bodyPart?: BodyPart;
  /** Absent: every product type but those in `exceptProductTypes`. */
  readonly productType?: ProductType;
  readonly exceptProductTypes?: readonly ProductType[];
  /** Age of the intended user: from minAgeMonths on, and younger than maxAgeMonths. A product without an age is for adults. */
  readonly minAgeMonths?: number;
  readonly maxAgeMonths?: number;
  /** `raw-material`: in the substance or mixture before it goes in; needs its certificate. Absent: the finished product. */
  readonly basis?: 'raw-material';
  readonly quantity: 'max' | 'prohibited' | 'ph-max';
  /** null: whether a limit holds, or how high it is, is not known: never free. 100 percent: the entry sets no maximum. */
  readonly value?: number | null;
  /** Absent: percent by weight. */
  readonly unit?: 'mg-per-kg' | 'mmol-per-litre' | 'ph' | 'kda';
  /** What the figure counts; absent: the substance itself. */
  readonly asWhat?: string;
  /** The value must be below the figure; absent: the figure itself is allowed. */
  readonly strict?: boolean;
  /** Amounts of all rows whose rules carry the same group are added before the comparison. */
  readonly sumGroup?: 'octynoates' | 'tagetes';
  /** Date from which products newly placed on the market must comply; absent: long in force, or not known. */
  readonly from?: string;
  /** Last day on which old stock, placed on the market before `from`, may be made available. */
  readonly until?: string;
  readonly onlyIf?: RestrictionCondition;
  /** Exact label text, where the rule asks for one. */
  readonly warning?: string;
  /** `opinion`: of a scientific committee, not binding. Absent: law. */
  readonly force?: 'opinion';
  readonly note?: string;
}

export interface RestrictedSubstance extends SourcedRow {
  readonly name: string;
  readonly aliases?: readonly string[];
  /** Amounts of all numbers are added together. */
  readonly cas: readonly string[];
  /** Absent: the row holds for every part and process. */
  readonly plantPart?: readonly string[];
  readonly process?: readonly string[];
  /** `natural`: content brought in by natural materials; `added`: the substance added as such. Absent: either. */
  readonly origin?: 'natural' | 'added';
  /** `naming-only`: no limit found. */
  readonly kind: 'restricted' | 'prohibited' | 'preservative' | 'colourant' | 'uv-filter' | 'naming-only';
  readonly annex?: 'II' | 'III' | 'V';
  readonly entry?: string;
  readonly rules: readonly RestrictionRule[];
  readonly note?: string;
}

/** A word of the tables with what it covers. */
export interface VocabularyWord<Word extends string> {
  readonly id: Word;
  readonly covers: string;
}
