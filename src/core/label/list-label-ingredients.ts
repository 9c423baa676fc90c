import { done, type Result } from '../problem.ts';
import type { LabelIngredient, LabelLaw, LabelMarket, LabelQuestion } from './label-question.ts';
import { orderIngredients } from './order-ingredients.ts';

/** As much of a label's question as its list of ingredients hangs on. */
type ListedQuestion = Pick<LabelQuestion, 'market' | 'ingredients' | 'isScentTogether'>;

/** Article 19(1)(g): "Parfum"; 21 CFR 701.3(a): "Fragrance". */
const scentName = (market: LabelMarket): string => (market === 'US' ? 'Fragrance' : 'Parfum');

/** A nanomaterial has `(nano)` after its name (Article 19(1)(g)); the United States have no such rule. */
function nameOf({ name, isNano = false }: LabelIngredient, market: LabelMarket): string {
  return isNano && market !== 'US' ? `${name.trim()} (nano)` : name;
}

/** What scents it, under one name where the product says so; the allergens stand besides all the same. */
function gatherScent(question: ListedQuestion): readonly LabelIngredient[] {
  const { ingredients, isScentTogether = false, market } = question;
  if (!isScentTogether) return ingredients;
  const isScent = ({ role }: LabelIngredient): boolean => role === 'fragrance';
  return ingredients.map((each) => (isScent(each) ? { ...each, name: scentName(market) } : each));
}

/** As they are to be listed: what scents it gathered, names of nanomaterials marked. `name` '' where nobody knows it. */
export const nameIngredients = (question: ListedQuestion): readonly LabelIngredient[] =>
  gatherScent(question).map((each) =>
    each.name.trim() === '' ? each : { ...each, name: nameOf(each, question.market) },
  );

/** What lacks a label name cannot be listed; the element says so and stays missing. */
export function listLabelIngredients(question: LabelQuestion, law: LabelLaw): Result<readonly string[]> {
  const withName = nameIngredients(question).filter(({ name }) => name.trim() !== '');
  if (withName.length === 0) return done([]);
  const ordered = orderIngredients(withName, question.allergens.named, law.order);
  return ordered.ok ? done(ordered.value.list) : ordered;
}
