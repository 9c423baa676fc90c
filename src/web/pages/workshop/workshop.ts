import type { AnswerOf } from '../../api/shapes.ts';

export type Workshop = AnswerOf<'getWorkshop'>;
export type WorkshopDetails = NonNullable<Workshop['details']>;
export type WorkshopPerson = Workshop['people'][number];
export type Scale = Workshop['scales'][number];
export type Place = Workshop['places'][number];
