import type { Evidence, SourcedRow } from './sourced-row.ts';

/** One constituent in percent by mass of the oil. The worst case takes the most, and `remembered.mostPercent` if that is more. */
export interface OilConstituent extends Evidence {
  readonly name: string;
  readonly cas?: string;
  /** id of a fragrance allergen. */
  readonly allergenEntryId?: string;
  /** Absent: only one figure is known. */
  readonly leastPercent?: number;
  readonly typicalPercent: number;
  readonly mostPercent?: number;
  /** The range recalled before a source was read, kept where it reaches further. */
  readonly remembered?: Evidence & { readonly leastPercent: number; readonly mostPercent: number };
  readonly alsoSources?: readonly string[];
  /** How a field is known, where otherwise than the row. */
  readonly evidence?: Readonly<Record<string, Evidence>>;
  readonly note?: string;
}

export interface EssentialOil extends SourcedRow {
  readonly name: string;
  readonly botanical: string;
  readonly inciEu: string;
  /** id in the ingredient names. */
  readonly inciNameId?: string;
  readonly process?: string;
  readonly plantPart: string;
  readonly aliases: readonly string[];
  readonly cas: readonly string[];
  readonly allergenEntryId?: string;
  readonly phototoxic: boolean;
  readonly constituents: readonly OilConstituent[];
  readonly note?: string;
}

/** A spelling that fits several oils: ask for what `tellApartBy` names. */
export interface AmbiguousAlias extends SourcedRow {
  readonly alias: string;
  readonly oilIds: readonly string[];
  readonly tellApartBy: 'botanical' | 'process' | 'chemotype';
  readonly otherMaterials: readonly string[];
}
