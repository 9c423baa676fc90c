export { composeLabelText } from './compose-label-text.ts';
export {
  type Durability,
  type DurabilityMark,
  type DurabilityQuestion,
  decideBestBefore,
} from './decide-best-before.ts';
export type {
  LabelElement,
  LabelElementName,
  LabelLaw,
  LabelMarket,
  LabelQuestion,
  LabelReason,
  LabelText,
} from './label-question.ts';
export {
  type IngredientLine,
  type OrderedIngredients,
  type OrderRule,
  orderIngredients,
} from './order-ingredients.ts';
export { type AddressPlace, placeOfAddress } from './place-of-address.ts';
export { sayDurability } from './say-durability.ts';
