import type { AnswerOf } from '../../api/shapes.ts';

export type Label = AnswerOf<'getRunLabel'>;
