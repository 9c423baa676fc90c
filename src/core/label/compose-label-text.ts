import { findFigureHeightMm } from '../filling/index.ts';
import { done, type Problem, problem, type Result } from '../problem.ts';
import { isLacking } from './is-lacking.ts';
import {
  judgeBatch,
  judgeContent,
  judgeDate,
  judgeEMark,
  judgeFunction,
  judgeIngredients,
  judgeName,
  judgeOrigin,
  judgePeriod,
  judgePrecautions,
} from './judge-elements.ts';
import { judgeLanguage } from './judge-language.ts';
import { judgeContact, judgeResponsible } from './judge-responsible.ts';
import type { Judged } from './judged.ts';
import type { LabelElement, LabelElementName, LabelLaw, LabelQuestion, LabelText } from './label-question.ts';
import { listLabelIngredients, nameIngredients } from './list-label-ingredients.ts';
import { findUsFigureHeightMm } from './us-figure-height-mm.ts';

const toProblem = ({ state, reason, element, source }: LabelElement): Problem[] =>
  isLacking({ state }) && reason !== null
    ? [problem(reason.code, element, { source, parameters: reason.parameters })]
    : [];

const panelHeightOf = (
  { panelSquareMm = 0 }: LabelQuestion,
  { panelHeights = [] }: LabelLaw,
): number | undefined => findUsFigureHeightMm(panelSquareMm, panelHeights);

type Judge = (question: LabelQuestion, law: LabelLaw, list: readonly string[]) => Judged;

const JUDGES: Readonly<Record<LabelElementName, Judge>> = {
  'product-name': judgeName,
  function: judgeFunction,
  'nominal-content': judgeContent,
  'e-mark': judgeEMark,
  ingredients: (question, _law, list) =>
    judgeIngredients({ ...question, ingredients: nameIngredients(question) }, list),
  'minimum-durability': judgeDate,
  'period-after-opening': judgePeriod,
  precautions: judgePrecautions,
  'batch-number': judgeBatch,
  'responsible-person': judgeResponsible,
  contact: judgeContact,
  'country-of-origin': judgeOrigin,
  language: judgeLanguage,
};

/**
 * The words of a label for one market, element by element: what is there, what is missing and why, what is not needed,
 * and where it must stand. Source: Regulation (EC) No 1223/2009, Article 19, with the rules of Northern Ireland and Great
 * Britain; for the United States 21 CFR 701 and 740 and MoCRA; the heights of the figures after Directive 76/211/EEC.
 * Whether the pieces fit is decided where the label is laid out.
 */
export function composeLabelText(question: LabelQuestion, law: LabelLaw): Result<LabelText> {
  const height = findFigureHeightMm(question.declaredGrams, law.figureHeights, 'declaredGrams');
  if (!height.ok) return height;
  const list = listLabelIngredients(question, law);
  if (!list.ok) return list;
  const elements = Object.entries(law.elements).map(([name, where]): LabelElement => {
    const element = name as LabelElementName;
    return { element, ...where, ...JUDGES[element](question, law, list.value) };
  });
  return done({
    elements,
    missing: elements.flatMap(toProblem),
    figureHeightMm: panelHeightOf(question, law) ?? height.value,
    ingredientList: list.value,
  });
}
