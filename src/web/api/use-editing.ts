import { useState } from 'react';

export interface Editing<Draft, Thing = never> {
  readonly draft: Draft;
  readonly set: <Key extends keyof Draft>(key: Key) => (value: Draft[Key]) => void;
  /** It differs from what the form began with (for `useUnsaved`). */
  readonly isChanged: boolean;
  readonly change: (change: (draft: Draft) => Draft) => void;
  /** The version that the person saw when they began: what a write must carry. */
  readonly version: number;
  /** As it stands now, put as a draft. */
  readonly theirs: Draft;
  readonly takeTheirs: () => void;
  /** Keeps what was typed, over what stands now. */
  readonly keepMine: () => void;
  /** Starts over from the thing as a write answered it, where the form stays open. */
  readonly seen: (thing: Thing) => void;
}

/**
 * A draft of something that others may change at the same time. The version stays the one that was seen: fetching the
 * thing again in the background must not turn an old draft into a new one.
 */
export function useEditing<Thing extends { readonly version: number }, Draft extends object>(
  thing: Thing,
  toDraft: (thing: Thing) => Draft,
): Editing<Draft, Thing> {
  const begin = (from: Thing) => {
    const first = toDraft(from);
    return { draft: first, began: first, version: from.version };
  };
  const [{ draft, began, version }, setSeen] = useState(() => begin(thing));
  const change = (next: (draft: Draft) => Draft) => setSeen((seen) => ({ ...seen, draft: next(seen.draft) }));
  return {
    draft,
    version,
    isChanged: JSON.stringify(draft) !== JSON.stringify(began),
    change,
    set: (key) => (value) => change((now) => ({ ...now, [key]: value })),
    theirs: toDraft(thing),
    takeTheirs: () => setSeen(begin(thing)),
    seen: (now) => setSeen(begin(now)),
    keepMine: () => setSeen((seen) => ({ ...seen, version: thing.version })),
  };
}
