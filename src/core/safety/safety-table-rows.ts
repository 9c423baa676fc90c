/**
 * The shape of the published tables that safety is judged by. They come in as arguments: this room knows how to
 * choose among rules, never a figure.
 */
export interface Sourced {
  readonly id: string;
  readonly source: string;
  readonly confidence: string;
}

/** A fragrance allergen that must be named over its threshold. */
export interface AllergenRow extends Sourced {
  readonly entry: number;
  readonly labelName: string;
  readonly match: {
    readonly names: readonly string[];
    readonly plantPart?: readonly string[];
    readonly process?: readonly string[];
    readonly cas: readonly string[];
  };
  readonly members: readonly { readonly name: string; readonly cas: readonly string[] }[];
  readonly thresholdLeaveOnPercent: number;
  readonly thresholdRinseOffPercent: number;
  readonly requiredForPlacingFrom: string;
  readonly requiredForMakingAvailableFrom: string;
  readonly newMembers?: {
    readonly cas: readonly string[];
    readonly requiredForPlacingFrom: string;
    readonly requiredForMakingAvailableFrom: string;
  };
  readonly gb: { readonly listed: boolean; readonly cas?: readonly string[]; readonly confidence: string };
}

export type Market = 'EU' | 'NI' | 'GB' | 'US';
export type Use = 'leave-on' | 'rinse-off';

/** One rule of law; an absent field sets no condition. */
export interface RestrictionRuleRow extends Sourced {
  readonly markets: readonly Market[];
  readonly use?: Use;
  readonly bodyPart?: string;
  readonly productType?: string;
  readonly exceptProductTypes?: readonly string[];
  readonly minAgeMonths?: number;
  readonly maxAgeMonths?: number;
  readonly basis?: 'raw-material';
  readonly quantity: 'max' | 'prohibited' | 'ph-max';
  /** null: not known. */
  readonly value?: number | null;
  readonly unit?: 'mg-per-kg' | 'mmol-per-litre' | 'ph' | 'kda';
  readonly asWhat?: string;
  readonly strict?: boolean;
  readonly sumGroup?: string;
  readonly from?: string;
  readonly onlyIf?: string;
  readonly warning?: string;
  readonly force?: 'opinion';
}

export interface RestrictionRow extends Sourced {
  readonly name: string;
  readonly aliases?: readonly string[];
  readonly cas: readonly string[];
  readonly plantPart?: readonly string[];
  readonly process?: readonly string[];
  readonly origin?: 'natural' | 'added';
  readonly kind: string;
  readonly annex?: string;
  readonly entry?: string;
  readonly rules: readonly RestrictionRuleRow[];
}

export type CategoryLimit = number | 'no-restriction' | 'prohibited' | 'unknown';

export interface IfraRow extends Sourced {
  readonly name: string;
  readonly aliases?: readonly string[];
  readonly cas: readonly string[];
  readonly plantPart?: readonly string[];
  readonly process?: readonly string[];
  readonly sumGroup?: string;
  readonly rinseOffFree?: boolean;
  readonly limits: Readonly<Record<string, CategoryLimit>>;
  readonly specification?: {
    readonly quantity: string;
    readonly asWhat: string;
    readonly value: number;
    readonly unit: string;
    readonly strict?: boolean;
  };
  readonly edition?: string;
}

/** A CAS number that several materials share. */
export interface SharedCasRow {
  readonly cas: string;
  readonly tellApartBy: readonly string[];
  readonly materials?: readonly {
    readonly name: string;
    readonly allergenEntryId?: string;
    readonly plantPart?: string;
    readonly process?: string;
    readonly form?: string;
    readonly prohibitedEntry?: string;
  }[];
}

/** A material whose names are known: names go before CAS numbers, so a known name settles a shared number. */
export interface KnownMaterialRow {
  readonly id: string;
  readonly name: string;
  readonly inciEu: string;
  readonly aliases?: readonly string[];
  readonly cas: readonly string[];
  readonly plantPart?: string;
  readonly process?: string;
  readonly allergenEntryId?: string;
}

export interface PublishedSafetyTables {
  readonly allergens: readonly AllergenRow[];
  readonly restrictions: readonly RestrictionRow[];
  readonly ifra: readonly IfraRow[];
  readonly sharedCas: readonly SharedCasRow[];
  readonly materials: readonly KnownMaterialRow[];
  /** Names that tables print with a number and without a rule, such as constituents of oils. */
  readonly substances: readonly { readonly name: string; readonly cas: readonly string[] }[];
  /** Colourants that Annex IV lists, as far as it has been gathered: without their conditions of use. */
  readonly listedColours: readonly { readonly names: readonly string[]; readonly cas: readonly string[] }[];
}
