import type { z } from 'zod';
import { answerOpenedOrigins, type OpenedRevision } from '../../check/index.ts';
import type { answers, Market } from '../../contract/index.ts';
import { isLacking, type LabelText } from '../../core/label/index.ts';
import { saying } from '../saying.ts';

export type AnswersView = z.output<typeof answers.productAnswers>;

interface Asked {
  readonly productId: string;
  readonly productName: string;
  readonly batchNumber: string | null;
  readonly opened: OpenedRevision;
  readonly ingredients: AnswersView['ingredients'];
}

export const viewAnswers = ({ opened, ...asked }: Asked): AnswersView => ({
  ...asked,
  origins: answerOpenedOrigins(opened),
});

/** The list as the label has it, and what keeps it from being given out. */
export function viewIngredients(market: Market, text: LabelText | null): AnswersView['ingredients'][number] {
  const element = text?.elements.find((each) => each.element === 'ingredients');
  const reason = element && isLacking(element) ? element.reason : null;
  return {
    market,
    text: text ? text.ingredientList.join(', ') : '',
    missing: text
      ? reason && saying(reason.code, { ...reason.parameters })
      : saying('ingredients-not-to-be-said'),
    printed: null,
  };
}
