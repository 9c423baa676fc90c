export { composeLabelText } from './compose-label-text.ts';
export {
  type Durability,
  type DurabilityMark,
  type DurabilityQuestion,
  decideBestBefore,
} from './decide-best-before.ts';
export { buildDigitalLinkUri, type DigitalLinkQuestion } from './digital-link-uri.ts';
export { durabilityFigures } from './durability-figures.ts';
export { gtinCheckDigit, readGtin } from './gtin.ts';
export { buildInHouseCode } from './in-house-code.ts';
export { isCalendarDate } from './is-calendar-date.ts';
export { isLacking } from './is-lacking.ts';
export { US_UNSUBSTANTIATED_WARNING } from './judge-elements.ts';
export type {
  ElementLaw,
  LabelElement,
  LabelElementName,
  LabelIngredient,
  LabelLaw,
  LabelMarket,
  LabelQuestion,
  LabelReason,
  LabelText,
  NoOpenedPeriod,
  SaleCountry,
} from './label-question.ts';
export { nameIngredients } from './list-label-ingredients.ts';
export {
  type IngredientLine,
  type OrderedIngredients,
  type OrderRule,
  orderIngredients,
} from './order-ingredients.ts';
export { type AddressPlace, placeOfAddress } from './place-of-address.ts';
export { sayDurability, sayDurabilityInUs } from './say-durability.ts';
export { splitLabelName } from './split-label-name.ts';
export { sayUsNetWeight } from './us-net-weight.ts';
export { type Panel, usPanelAreaMm2 } from './us-panel-area-mm2.ts';
