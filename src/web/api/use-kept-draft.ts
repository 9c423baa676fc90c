import { useMemo, useSyncExternalStore } from 'react';
import { keptInTab, kept as keptOnTablet } from './kept.ts';
import { makeKeptDraft, type Texts } from './make-kept-draft.ts';

/**
 * Typed text that comes through a reload or a sleeping tablet: kept in this tab under `key`, field by field, until
 * `forget` is called once a write was accepted. `where`: on the tablet it comes through a closed page too.
 */
export function useKeptDraft<Draft extends Texts>(
  key: string,
  first: Draft,
  where: 'tab' | 'tablet' = 'tab',
) {
  // What a form begins with is told anew each time it is drawn; only another text in it begins another draft.
  const begun = JSON.stringify(first);
  const kept = useMemo(
    () => makeKeptDraft(where === 'tab' ? keptInTab : keptOnTablet, key, JSON.parse(begun) as Draft),
    [where, key, begun],
  );
  const draft = useSyncExternalStore(kept.watch, kept.read);
  const set = (name: keyof Draft) => (value: string) =>
    kept.change({ [name]: value } as Readonly<Partial<Draft>>);
  return { draft, set, take: kept.change, forget: kept.forget };
}
