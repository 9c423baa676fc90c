export interface Kept {
  readonly read: (key: string) => string | null;
  readonly write: (key: string, value: string | null) => void;
}

/** Where storage is switched off or full it forgets, and the pages still work. */
export function makeKept(storage: () => Storage): Kept {
  return {
    read(key) {
      try {
        return storage().getItem(`gramwright.${key}`);
      } catch {
        return null;
      }
    },
    write(key, value) {
      try {
        if (value === null) storage().removeItem(`gramwright.${key}`);
        else storage().setItem(`gramwright.${key}`, value);
      } catch {
        // Storage is full or forbidden: the choice then lasts as long as the page.
      }
    },
  };
}

/** What this browser remembers between visits. */
export const kept: Kept = makeKept(() => localStorage);

/** What this tab remembers until it is closed: it comes through a reload, and no other tab sees it. */
export const keptInTab: Kept = makeKept(() => sessionStorage);
