import type { findFigureHeightMm } from '../filling/index.ts';
import type { Problem } from '../problem.ts';
import type { ExactInput } from '../quantity/index.ts';
import type { DurabilityMark } from './decide-best-before.ts';
import type { IngredientLine, OrderRule } from './order-ingredients.ts';
import type { PanelHeight } from './us-figure-height-mm.ts';

export type LabelMarket = 'GB' | 'NI' | 'EU' | 'US';

export type LabelElementName =
  | 'product-name'
  | 'function'
  | 'nominal-content'
  | 'e-mark'
  | 'ingredients'
  | 'minimum-durability'
  | 'period-after-opening'
  | 'precautions'
  | 'batch-number'
  | 'responsible-person'
  | 'contact'
  | 'country-of-origin'
  | 'language';

/** Why a product that keeps longer than 30 months needs no period after opening (Article 19(1)(c)). */
export type NoOpenedPeriod = 'single-use' | 'cannot-be-opened' | 'does-not-spoil';

/** A member state that it is sold in, with the languages that its law asks for. */
export interface SaleCountry {
  /** ISO 3166 code of two letters. */
  readonly country: string;
  /** Each a set of languages that is enough by itself. */
  readonly languages: readonly (readonly string[])[];
}

export interface LabelQuestion {
  readonly market: LabelMarket;
  /** Day on which it is placed on the market. */
  readonly placedOn: string;
  readonly productName: string;
  readonly functionText: string;
  /** Its presentation leaves no doubt what it is for. */
  readonly isFunctionClear?: boolean;
  readonly declaredGrams: ExactInput;
  /** Face of the label, which bears the content; the United States go by it. */
  readonly panelSquareMm?: ExactInput;
  /** How the tins are filled; the e-mark is for the average way alone. */
  readonly fillBasis?: 'minimum' | 'average';
  readonly hasEMark?: boolean;
  /** Label names by percent; `name` '' where nobody knows it. */
  readonly ingredients: readonly LabelIngredient[];
  /** List what scents it under one name (`Parfum`) instead of by its own names. */
  readonly isScentTogether?: boolean;
  readonly allergens: { readonly named: readonly string[]; readonly undecided: readonly string[] };
  /** null: not filled yet. */
  readonly batchNumber: string | null;
  readonly durability: {
    readonly mark: DurabilityMark;
    readonly date: string;
    readonly openedMonths: number | null;
  } | null;
  /** The words of the law before the date, or its hourglass. */
  readonly durabilitySign?: 'words' | 'hourglass';
  readonly noOpenedPeriod?: NoOpenedPeriod | null;
  readonly precautions: { readonly text: string; readonly required: readonly string[] };
  /** An assessor's report covers it in this market: the United States want a warning otherwise. */
  readonly isSafetySubstantiated?: boolean;
  /** The person for this market, and how a buyer reports harm to them. */
  readonly responsible: { readonly name: string; readonly address: string; readonly contact?: string };
  /** ISO 3166 code of two letters. */
  readonly madeIn: { readonly country: string; readonly isNorthernIreland: boolean };
  /** European Union: where it is sold. */
  readonly saleCountries?: readonly SaleCountry[];
  /** Languages that the label prints its words in, as ISO 639 codes; absent: nobody has said. */
  readonly printedIn?: readonly string[];
}

export interface LabelIngredient extends IngredientLine {
  readonly materialName: string;
  readonly isNano?: boolean;
}

/** Where an element is asked for, how well that is known, and where it must stand. */
export interface ElementLaw {
  readonly source: string;
  readonly confidence: string;
  readonly onContainer: boolean;
  readonly onPackaging: boolean;
}

/** What the tables of law bring in, for one market. */
export interface LabelLaw {
  /** In the order in which people read them; an element that the market's law does not know is left out. */
  readonly elements: Readonly<Partial<Record<LabelElementName, ElementLaw>>>;
  readonly order: OrderRule;
  readonly figureHeights: Parameters<typeof findFigureHeightMm>[1];
  /** Where figures go by the area of the panel instead of the content. */
  readonly panelHeights?: readonly PanelHeight[];
  /** Below this many grams the content need not stand there. */
  readonly contentFromGrams: number;
  /** Nominal contents that the e-mark is for. */
  readonly eMarkGrams: { readonly from: number; readonly upTo: number };
  /** Last day on which Great Britain takes the address of the European Union alone. */
  readonly euAddressInGbUntil: string;
}

export interface LabelReason {
  readonly code: string;
  readonly parameters: Readonly<Record<string, string | number>>;
}

export interface LabelElement extends ElementLaw {
  readonly element: LabelElementName;
  readonly text: string;
  readonly required: boolean;
  /** `unknown`: nobody has told what decides it; it holds the label as `missing` does. */
  readonly state: 'there' | 'missing' | 'unknown' | 'not-needed';
  readonly reason: LabelReason | null;
  /** Stands before its text as a sign of the law. */
  readonly sign?: 'hourglass' | 'open-jar' | 'e-mark';
}

export interface LabelText {
  /** In the order in which people read them; the law sets none. */
  readonly elements: readonly LabelElement[];
  /** One for each missing element: while there is any, nothing is printed for sale. */
  readonly missing: readonly Problem[];
  readonly figureHeightMm: number;
  readonly ingredientList: readonly string[];
}
