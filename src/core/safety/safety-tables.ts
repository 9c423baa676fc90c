import type { Match } from './match.ts';
import type { NameDictionary } from './name-dictionary.ts';
import type { RowIndex } from './row-index.ts';
import type {
  AllergenRow,
  IfraRow,
  KnownMaterialRow,
  RestrictionRow,
  RestrictionRuleRow,
  SharedCasRow,
} from './safety-table-rows.ts';
import type { RuleTold } from './told.ts';

/** Where a substance belongs in each of the tables. */
export interface SubstanceMatches {
  readonly allergens: Match<AllergenRow>;
  readonly restrictions: Match<RestrictionRow>;
  readonly ifra: Match<IfraRow>;
}

/** A rule with what a verdict tells of it, and its limit in whole picopercent. */
export interface PlannedRule {
  readonly rule: RestrictionRuleRow;
  readonly told: RuleTold;
  /** NaN where the figure is not a share of the product, or not known. */
  readonly limitPico: number;
}

/** What one row asks of a product, over all situations that the product may be used in. */
export interface LimitPlan {
  readonly prohibition?: PlannedRule;
  /** The lowest known limits that a composition can be compared with. */
  readonly limits: readonly PlannedRule[];
  /** A rule whose value is not known. */
  readonly notKnown?: PlannedRule;
  /** The row limits finished products, but none of its rules covers this use. */
  readonly isUncovered: boolean;
  /** Rules that only a certificate or a measurement can answer. */
  readonly certificates: readonly PlannedRule[];
  /** What is told where no rule decides. */
  readonly told: RuleTold;
}

/** The published tables with their indexes, and what has been looked up in them before. Build once, judge often. */
export interface SafetyTables {
  readonly allergens: RowIndex<AllergenRow>;
  readonly restrictions: RowIndex<RestrictionRow>;
  readonly ifra: RowIndex<IfraRow>;
  readonly sharedCas: ReadonlyMap<string, readonly SharedCasRow[]>;
  readonly dictionary: NameDictionary;
  /** Names and CAS numbers of colourants that Annex IV lists, as far as the tables know. */
  readonly listedColours: ReadonlySet<string>;
  /** Markets that at least one rule of law speaks of. */
  readonly lawMarkets: ReadonlySet<string>;
  readonly materialsByName: ReadonlyMap<string, readonly KnownMaterialRow[]>;
  readonly materialsByCas: ReadonlyMap<string, readonly KnownMaterialRow[]>;
  /** Remembered answers: the same substance met again is not looked up again. */
  readonly remembered: {
    readonly matches: Map<string, SubstanceMatches>;
    readonly plans: Map<string, Map<RestrictionRow, LimitPlan>>;
  };
}
