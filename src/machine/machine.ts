import { randomUUID } from 'node:crypto';

/** What the world gives: time and chance. Injected everywhere, so that tests and the example can set them. */
export interface Machine {
  /** Now, ISO 8601 in UTC. */
  now(): string;
  newId(): string;
}

export const realMachine: Machine = {
  now: () => new Date().toISOString(),
  newId: () => randomUUID(),
};
