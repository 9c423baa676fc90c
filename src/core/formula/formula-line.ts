/** What a line of a formula takes: something bought, or a base that is made and kept. */
export type FormulaItem =
  | { readonly kind: 'material'; readonly id: string }
  | { readonly kind: 'base'; readonly formulaId: string };

/** One line as it was typed: grams as made, by stage. */
export interface FormulaLine {
  readonly key: string;
  readonly stage: string;
  readonly item: FormulaItem;
  /** Decimal text with at most six places. */
  readonly grams: string;
}

/** `material:shea`, `base:quiet`: one word for an item, whatever it is. */
export const itemKey = (item: FormulaItem): string =>
  item.kind === 'material' ? `material:${item.id}` : `base:${item.formulaId}`;
