import type { AnswerOf } from '../../api/shapes.ts';

export type Material = AnswerOf<'getMaterial'>;
export type MaterialDetails = Material['details'];
export type Constituent = MaterialDetails['constituents'][number];
