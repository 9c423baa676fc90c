import type { Evidence, SourcedRow } from './sourced-row.ts';

/** One entry of Annex III that must be named on the label above its threshold. */
export interface FragranceAllergen extends SourcedRow {
  readonly kind: 'single-substance' | 'isomer-group' | 'natural-extract' | 'group';
  /** Entry number in Annex III of Regulation (EC) No 1223/2009. */
  readonly entry: number;
  readonly labelName: string;
  /** The one name printed where members are counted under a name that is none of their own. */
  readonly collectiveName?: string;
  readonly sumMembers: boolean;
  /** Name before CAS; a condition that is absent is not set. */
  readonly match: {
    readonly names: readonly string[];
    readonly plantPart?: readonly string[];
    readonly process?: readonly string[];
    readonly cas: readonly string[];
  };
  readonly members: readonly { readonly name: string; readonly cas: readonly string[] }[];
  /** Named when the content is strictly over the threshold. */
  readonly thresholdLeaveOnPercent: number;
  readonly thresholdRinseOffPercent: number;
  /** First day on which a unit placed on the market, or made available, must name it (EU and Northern Ireland). */
  readonly requiredForPlacingFrom: string;
  readonly requiredForMakingAvailableFrom: string;
  /** CAS numbers that joined an older entry later, with their own days. */
  readonly newMembers?: Evidence & {
    readonly cas: readonly string[];
    readonly requiredForPlacingFrom: string;
    readonly requiredForMakingAvailableFrom: string;
  };
  /** Great Britain kept the list of 24 with the older scope of CAS numbers. */
  readonly gb: Evidence & { readonly listed: boolean; readonly cas?: readonly string[] };
  readonly note?: string;
}

/** A CAS number that several materials share: it never decides alone. */
export interface CasTrap extends SourcedRow {
  readonly cas: string;
  readonly tellApartBy: readonly ('plantPart' | 'process' | 'form' | 'name')[];
  readonly materials: readonly {
    readonly name: string;
    readonly allergenEntryId?: string;
    readonly plantPart?: string;
    readonly process?: string;
    readonly form?: string;
    readonly prohibitedEntry?: string;
  }[];
  readonly note?: string;
}

export interface NamingRule extends SourcedRow {
  readonly text: string;
}
