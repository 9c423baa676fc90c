import type { ExactInput, Quotient } from '../quantity/index.ts';
import type { FunctionTold } from './judge-positive-lists.ts';
import type { RawMaterialFigures } from './judge-raw-material.ts';
import type { FormulaMaterial, ReportAnswer, SafetyReport } from './judge-report.ts';
import type { SupplierLimit, SupplierVerdict } from './judge-supplier-limits.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import type { NamingAnswer, NamingContext, NamingUnknown } from './name-allergens.ts';
import type { Market } from './safety-table-rows.ts';
import type { ProductKind } from './situations.ts';
import type { Substance } from './substance.ts';

/** A substance of the finished product, in percent by mass, as the formula's materials bring it in. */
export interface RangedContribution extends Substance {
  readonly leastPercent?: ExactInput | Quotient;
  readonly typicalPercent?: ExactInput | Quotient;
  /** Absent: the supplier's paper does not say how much. */
  readonly mostPercent?: ExactInput | Quotient;
  /** How the amounts are known: the weakest of its materials. */
  readonly confidence: string;
  readonly fromMaterials: readonly string[];
}

/** What a named person decided about one unknown of this revision. */
export interface UnknownDecision {
  readonly unknownKey: string;
  readonly isAccepted: boolean;
  readonly decidedBy: string;
  readonly decidedOn: string;
  readonly reason: string;
}

export interface CompositionQuestion extends ProductKind, Omit<NamingContext, 'market'> {
  /** Other uses of the same product: it is judged for each, and the tightest decides. */
  readonly alsoUsedAs?: readonly ProductKind[];
  readonly markets: readonly Market[];
  readonly minAgeMonths?: number;
  readonly contributions: readonly RangedContribution[];
  /** Materials that are in it as something which only listed substances may be. */
  readonly functions?: readonly FunctionTold[];
  /** The formula's materials in percent by mass, for the report and the suppliers' limits. */
  readonly materials?: readonly FormulaMaterial[];
  readonly baseId?: string;
  readonly scentId?: string;
  /** null: there is none; absent: not asked. */
  readonly report?: SafetyReport | null;
  readonly supplierLimits?: readonly SupplierLimit[];
  readonly decisions?: readonly UnknownDecision[];
  /** What the papers of the lots measure; absent where no lots are chosen. */
  readonly rawMaterials?: readonly RawMaterialFigures[];
}

export interface CheckedVerdict extends LimitVerdict {
  readonly unknownKey?: string;
  readonly decision?: UnknownDecision;
}

export interface CheckedNamingUnknown extends NamingUnknown {
  readonly unknownKey: string;
  readonly decision?: UnknownDecision;
}

export interface MarketCheck {
  readonly market: Market;
  readonly verdicts: readonly CheckedVerdict[];
  readonly decidedBy: string | null;
  readonly sumOfShares?: number;
  readonly naming: Omit<NamingAnswer, 'unknown'> & { readonly unknown: readonly CheckedNamingUnknown[] };
}

export type ReasonKind =
  | 'prohibited'
  | 'over'
  | 'unknown'
  | 'unknown-refused'
  | 'name-unknown'
  | 'name-unknown-refused'
  | 'supplier-over'
  | 'report-missing'
  | 'report-over'
  | 'report-below'
  | 'report-not-covered'
  | 'report-base-not-covered'
  | 'report-scent-not-covered'
  | 'report-review-passed'
  | 'report-review-close';

/** One thing that stands between the revision and making it for sale, or that is only to be seen. */
export interface SaleReason {
  readonly kind: ReasonKind;
  readonly blocks: 'yes' | 'until-decided' | 'no';
  readonly market?: Market;
  readonly substance?: string | undefined;
  readonly rule?: string | undefined;
  readonly unknownKey?: string | undefined;
}

export interface CompositionAnswer {
  readonly markets: readonly MarketCheck[];
  readonly report?: ReportAnswer;
  readonly supplier: readonly SupplierVerdict[];
  readonly mayMakeForSale: 'yes' | 'no' | 'decide';
  readonly reasons: readonly SaleReason[];
}
