import type { AnswerOf } from '../../api/shapes.ts';

export type ShelfItem = AnswerOf<'getShelf'>['items'][number];
export type Lot = AnswerOf<'getLot'>['lot'];
export type LotDetail = AnswerOf<'getLot'>;
