import type { AnswerOf } from '../../api/shapes.ts';

/** An order with the answer to it. */
export type Order = AnswerOf<'getOrder'>;

/** As the list has it. */
export type ListedOrder = AnswerOf<'listOrders'>[number];
