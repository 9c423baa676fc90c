import type { AnswerOf } from '../../api/shapes.ts';

export type Formula = AnswerOf<'listFormulas'>[number];
