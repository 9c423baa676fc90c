import { useState } from 'react';

/**
 * What a form holds while somebody types: `set('name')` is the field's change handler. `isChanged`: it differs from what
 * the form began with (for `useUnsaved`). `typed`: what was typed already on another page.
 */
export function useDraft<Draft extends object>(first: Draft, typed: Draft = first) {
  const [began, setBegan] = useState(first);
  const [draft, setDraft] = useState(typed);
  const set =
    <Key extends keyof Draft>(key: Key) =>
    (value: Draft[Key]) =>
      setDraft((now) => ({ ...now, [key]: value }));
  const isChanged = JSON.stringify(draft) !== JSON.stringify(began);
  /** A form that stays open after it was kept begins anew. */
  const beginAnew = (now: Draft) => {
    setBegan(now);
    setDraft(now);
  };
  return { draft, set, setDraft, isChanged, beginAnew };
}
