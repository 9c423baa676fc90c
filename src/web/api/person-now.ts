import { kept } from './kept.ts';
import { makeStore } from './make-store.ts';

const store = makeStore<string | null>(kept.read('person'));
/** Writes that wait until somebody has said who is working. */
const asking = makeStore<((personId: string | null) => void) | null>(null);

/** The person working at this machine now: every entry carries their id. */
export const personNow = {
  read: store.read,
  watch: store.watch,
  write(personId: string | null): void {
    store.write(personId);
    kept.write('person', personId);
    const answer = asking.read();
    asking.write(null);
    answer?.(personId);
  },
};

export const personAsked = asking;

/** Who enters this: known already, or asked now. null: nobody wanted to say. */
export function askPerson(): Promise<string | null> {
  const known = store.read();
  if (known !== null) return Promise.resolve(known);
  return new Promise((resolve) => {
    const earlier = asking.read();
    asking.write((personId) => {
      earlier?.(personId);
      resolve(personId);
    });
  });
}
