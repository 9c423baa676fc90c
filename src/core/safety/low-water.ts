import type { ExactInput } from '../quantity/index.ts';

/** Facts that a criterion asks for; absent: nobody has said or measured. */
export interface LowWaterFacts {
  /** Water, hydrosol, aloe, honey, milk or the like is weighed in. */
  readonly hasWaterPhase?: boolean;
  /** Water can come in while it is used: opened in the shower, taken with wet fingers. */
  readonly canWaterComeIn?: boolean;
  /** Left cold and uncovered, so that water condenses on it. */
  readonly canWaterCondense?: boolean;
  readonly waterActivity?: ExactInput;
  readonly ph?: ExactInput;
  /** By volume. */
  readonly ethanolPercent?: ExactInput;
  readonly fillingTemperatureCelsius?: ExactInput;
  readonly aluminiumChlorohydratePercent?: ExactInput;
  readonly isOrganicSolventBased?: boolean;
  readonly isOxidising?: boolean;
  /** What dissolves in the water that comes in: ids of the saturated solutions. */
  readonly dissolves?: readonly string[];
  /** Antioxidants in it, by their row. */
  readonly antioxidants?: readonly { readonly id: string; readonly percent: ExactInput }[];
  readonly starchPercent?: ExactInput;
}

export interface CriterionRow {
  readonly id: string;
  readonly quantity: string;
  readonly operator: '<' | '>' | 'is';
  readonly value: number | boolean;
  readonly rememberedOperator?: '<=' | '>=';
  readonly source: string;
  readonly confidence: string;
}

export interface LevelRow {
  readonly id: string;
  readonly name: string;
  readonly minPercent?: number;
  readonly typicalPercent?: number;
  readonly maxPercent?: number;
  readonly source: string;
  readonly confidence: string;
}

/** The published rows that an assessment reads. */
export interface LowWaterTables {
  readonly criteria: readonly CriterionRow[];
  readonly solutions: readonly { readonly id: string; readonly waterActivityAt25Celsius: number }[];
  readonly antioxidants: readonly LevelRow[];
  /** Water bound in air-dry starch, percent by mass of the starch. */
  readonly starchMoisture: { readonly typicalPercent: number; readonly maxPercent: number };
}

export type CriterionVerdict = 'met' | 'not-met' | 'not-told';

export interface JudgedCriterion extends CriterionRow {
  readonly verdict: CriterionVerdict;
  /** The value stands exactly at the figure: as read that is not met, as remembered it would be. */
  readonly isAtFigure: boolean;
}

export type LowWaterCaution =
  | 'low-water-comes-in'
  | 'low-water-may-come-in'
  | 'low-water-condenses'
  | 'low-water-antioxidant'
  | 'low-water-starch'
  | 'low-water-write-down';

export type LowWaterReason =
  /** A criterion is met: it stands in `criterion`. */
  | 'criterion-met'
  | 'water-phase'
  /** Nobody knows what one of the materials is. */
  | 'water-phase-not-told'
  /** What is in it dissolves in the water that comes in, and does not bind it enough. */
  | 'solution-too-wet'
  | 'water-comes-in'
  | 'water-in-use-not-told';

export interface JudgedAntioxidant extends LevelRow {
  readonly percent: number;
  readonly verdict: 'below' | 'usual' | 'above' | 'no-level';
}

export interface LowWaterAnswer {
  readonly lowRisk: 'yes' | 'no' | 'unknown';
  readonly reason: LowWaterReason;
  readonly criterion: JudgedCriterion | null;
  readonly criteria: readonly JudgedCriterion[];
  /** Criteria whose fact nobody has told: a measurement could change the answer. */
  readonly open: readonly string[];
  readonly cautions: readonly LowWaterCaution[];
  readonly antioxidants: readonly JudgedAntioxidant[];
  /** Bound in the starch, percent by mass of the product; null: no starch. */
  readonly boundWaterPercent: { readonly typical: number; readonly most: number } | null;
}
