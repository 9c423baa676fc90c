import { shellWords } from '../../words/index.ts';

export interface Room {
  readonly name: string;
  readonly to: string;
  /** Further addresses that belong to the room. */
  readonly alsoAt: readonly string[];
}

const { room } = shellWords;

export const ROOMS: readonly Room[] = [
  { name: room.morning, to: '/', alsoAt: [] },
  { name: room.orders, to: '/orders', alsoAt: [] },
  { name: room.formulas, to: '/formulas', alsoAt: ['/products', '/reports'] },
  { name: room.shelf, to: '/shelf', alsoAt: ['/materials'] },
  { name: room.making, to: '/making', alsoAt: ['/filling'] },
  { name: room.labels, to: '/labels', alsoAt: [] },
  { name: room.trace, to: '/trace', alsoAt: ['/complaints'] },
];

/** Quieter than the rest: nobody needs it at eight in the morning. */
export const WORKSHOP_ROOM: Room = { name: room.workshop, to: '/workshop', alsoAt: ['/scales'] };
