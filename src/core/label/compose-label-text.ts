import { findFigureHeightMm } from '../filling/index.ts';
import { done, type Problem, problem, type Result } from '../problem.ts';
import {
  type ElementJudges,
  judgeBatch,
  judgeContent,
  judgeDate,
  judgeFunction,
  judgeIngredients,
  judgeName,
  judgeOrigin,
  judgePeriod,
  judgePrecautions,
  judgeResponsible,
} from './judge-elements.ts';
import type { LabelElement, LabelElementName, LabelLaw, LabelQuestion, LabelText } from './label-question.ts';
import { orderIngredients } from './order-ingredients.ts';

/** What lacks a label name cannot be listed; the element says so and stays missing. */
function listIngredients(
  { ingredients, allergens }: LabelQuestion,
  law: LabelLaw,
): Result<readonly string[]> {
  const withName = ingredients.filter(({ name }) => name.trim() !== '');
  if (withName.length === 0) return done([]);
  const ordered = orderIngredients(withName, allergens.named, law.order);
  return ordered.ok ? done(ordered.value.list) : ordered;
}

const toProblem = ({ state, reason, element, source }: LabelElement): Problem[] =>
  state === 'missing' && reason !== null
    ? [problem(reason.code, element, { source, parameters: reason.parameters })]
    : [];

/**
 * The words of a label for one market, element by element: what is there, what is missing and why, what is not needed.
 * Source: Regulation (EC) No 1223/2009, Article 19, with the rules of Northern Ireland and Great Britain; the heights of
 * the figures after Directive 76/211/EEC. Whether the pieces fit is decided where the label is laid out.
 */
export function composeLabelText(question: LabelQuestion, law: LabelLaw): Result<LabelText> {
  const height = findFigureHeightMm(question.declaredGrams, law.figureHeights, 'declaredGrams');
  if (!height.ok) return height;
  const list = listIngredients(question, law);
  if (!list.ok) return list;
  const judged: ElementJudges = {
    'product-name': judgeName(question),
    function: judgeFunction(question),
    'nominal-content': judgeContent(question, law),
    ingredients: judgeIngredients(question, list.value),
    'minimum-durability': judgeDate(question),
    'period-after-opening': judgePeriod(question),
    precautions: judgePrecautions(question),
    'batch-number': judgeBatch(question),
    'responsible-person': judgeResponsible(question, law),
    'country-of-origin': judgeOrigin(question),
  };
  const elements = Object.entries(judged).map(([name, rest]): LabelElement => {
    const element = name as LabelElementName;
    return { element, source: law.sources[element], ...rest };
  });
  return done({
    elements,
    missing: elements.flatMap(toProblem),
    figureHeightMm: height.value,
    ingredientList: list.value,
  });
}
