import type { OrderRule } from '../core/label/index.ts';
import { type LabelMarket, type LabelRule, labelRules, usLabelRules } from '../reference/index.ts';
import { rowById } from './row-by-id.ts';

export type IngredientMarket = LabelMarket;

const orderOf = ({ thresholdPercent, freeWhen, id }: LabelRule): OrderRule => {
  if (thresholdPercent === undefined || freeWhen === undefined) throw new Error(`no threshold in ${id}`);
  return { thresholdPercent, freeWhen };
};

const EUROPEAN = orderOf(rowById(labelRules, 'ingredient-order'));
const AMERICAN = orderOf(rowById(usLabelRules, 'us-ingredient-1pct'));

/** From which share downward the market leaves the order of ingredients free. */
export const ingredientOrder = (market: IngredientMarket): OrderRule =>
  market === 'US' ? AMERICAN : EUROPEAN;

const { thresholdMonths } = rowById(labelRules, 'pao');
if (thresholdMonths === undefined) throw new Error('no threshold in pao');

/** Up to and with so many months a date stands on the label. */
export const DURABILITY_THRESHOLD_MONTHS = thresholdMonths;
