/** Ids of entries that this page made: it asks anew by itself once they are answered, and knows whose they are. */
const own = new Set<string>();

export const ownEntries = {
  add: (id: string): void => void own.add(id),
  has: (id: string): boolean => own.has(id),
};
