import type { Kept } from './kept.ts';

export type Texts = Readonly<Record<string, string>>;

export interface KeptDraft<Draft extends Texts> {
  readonly read: () => Draft;
  readonly watch: (onChange: () => void) => () => void;
  /** Upon what was typed by now, not upon what stood when the caller was drawn. */
  readonly change: (part: Partial<Draft>) => void;
  readonly forget: () => void;
}

/** Typed text, field by field: as long as it is what the form began with nothing is kept. */
export function makeKeptDraft<Draft extends Texts>(store: Kept, key: string, first: Draft): KeptDraft<Draft> {
  let latest = readDraft(store, key, first);
  const watchers = new Set<() => void>();
  function put(next: Draft): void {
    latest = next;
    store.write(key, JSON.stringify(next) === JSON.stringify(first) ? null : JSON.stringify(next));
    for (const tell of watchers) tell();
  }
  return {
    read: () => latest,
    watch(onChange) {
      watchers.add(onChange);
      return () => watchers.delete(onChange);
    },
    change: (part) => put({ ...latest, ...part }),
    forget: () => put(first),
  };
}

function readDraft<Draft extends Texts>(store: Kept, key: string, first: Draft): Draft {
  try {
    const read: unknown = JSON.parse(store.read(key) ?? '{}');
    const known = Object.entries(read ?? {}).filter(
      ([name, value]) => name in first && typeof value === 'string',
    );
    return { ...first, ...Object.fromEntries(known) };
  } catch {
    // Not ours, or written by another edition of the page: the form begins anew.
    return first;
  }
}
