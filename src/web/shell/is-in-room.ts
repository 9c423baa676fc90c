import type { Room } from './rooms.ts';

const isUnder = (path: string, start: string): boolean =>
  start === '/' ? path === '/' : path === start || path.startsWith(`${start}/`);

/** Whether the page at `path` belongs to the room. */
export const isInRoom = (path: string, room: Room): boolean =>
  [room.to, ...room.alsoAt].some((start) => isUnder(path, start));
