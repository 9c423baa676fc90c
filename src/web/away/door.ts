import type { Problem } from '../../core/problem.ts';
import { makeStore } from '../api/make-store.ts';

/** Why the workshop lets nothing of this tablet in: it has to be paired, or whoever works has to say who they are. */
export const door = makeStore<'device-not-paired' | 'person-locked' | null>(null);

/** No answer to an entry itself: it stays where it is. */
export const shutDoor = (problems: readonly Problem[]): 'device-not-paired' | 'person-locked' | undefined =>
  problems.some(({ code }) => code === 'device-not-paired')
    ? 'device-not-paired'
    : problems.some(({ code }) => code === 'person-locked')
      ? 'person-locked'
      : undefined;
