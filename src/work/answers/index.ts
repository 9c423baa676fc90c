import type { UseCases } from '../use-case.ts';
import { getProductAnswers } from './get-product-answers.ts';
import { getRunAnswers } from './get-run-answers.ts';

export const answerUseCases = { getProductAnswers, getRunAnswers } satisfies UseCases<
  'getProductAnswers' | 'getRunAnswers'
>;
