import type { AnswerOf } from '../../api/shapes.ts';

export type Check = AnswerOf<'checkRevision'>;
