import type { AnswerOf } from '../../api/shapes.ts';

export type Run = AnswerOf<'getRun'>;
