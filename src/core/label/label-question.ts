import type { findFigureHeightMm } from '../filling/index.ts';
import type { Problem } from '../problem.ts';
import type { ExactInput } from '../quantity/index.ts';
import type { DurabilityMark } from './decide-best-before.ts';
import type { IngredientLine, OrderRule } from './order-ingredients.ts';

export type LabelMarket = 'GB' | 'NI' | 'EU';

export type LabelElementName =
  | 'product-name'
  | 'function'
  | 'nominal-content'
  | 'ingredients'
  | 'minimum-durability'
  | 'period-after-opening'
  | 'precautions'
  | 'batch-number'
  | 'responsible-person'
  | 'country-of-origin';

export interface LabelQuestion {
  readonly market: LabelMarket;
  /** Day on which it is placed on the market. */
  readonly placedOn: string;
  readonly productName: string;
  readonly functionText: string;
  /** Its presentation leaves no doubt what it is for. */
  readonly isFunctionClear?: boolean;
  readonly declaredGrams: ExactInput;
  /** Label names by percent; `name` '' where nobody knows it. */
  readonly ingredients: readonly (IngredientLine & { readonly materialName: string })[];
  readonly allergens: { readonly named: readonly string[]; readonly undecided: readonly string[] };
  /** null: not filled yet. */
  readonly batchNumber: string | null;
  readonly durability: {
    readonly mark: DurabilityMark;
    readonly date: string;
    readonly openedMonths: number | null;
  } | null;
  readonly precautions: { readonly text: string; readonly required: readonly string[] };
  /** The person for this market. */
  readonly responsible: { readonly name: string; readonly address: string };
  /** ISO 3166 code of two letters. */
  readonly madeIn: { readonly country: string; readonly isNorthernIreland: boolean };
}

/** What the tables of law bring in. */
export interface LabelLaw {
  /** Where each element is asked for, in words. */
  readonly sources: Readonly<Record<LabelElementName, string>>;
  readonly order: OrderRule;
  readonly figureHeights: Parameters<typeof findFigureHeightMm>[1];
  /** Below this many grams the content need not stand there. */
  readonly contentFromGrams: number;
  /** Last day on which Great Britain takes the address of the European Union alone. */
  readonly euAddressInGbUntil: string;
}

export interface LabelReason {
  readonly code: string;
  readonly parameters: Readonly<Record<string, string | number>>;
}

export interface LabelElement {
  readonly element: LabelElementName;
  readonly text: string;
  readonly required: boolean;
  readonly source: string;
  readonly state: 'there' | 'missing' | 'not-needed';
  readonly reason: LabelReason | null;
}

export interface LabelText {
  /** In the order in which people read them; the law sets none. */
  readonly elements: readonly LabelElement[];
  /** One for each missing element: while there is any, nothing is printed for sale. */
  readonly missing: readonly Problem[];
  readonly figureHeightMm: number;
  readonly ingredientList: readonly string[];
}
