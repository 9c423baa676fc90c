import { useState } from 'react';

/** What a form holds while somebody types: `set('name')` is the field's change handler. */
export function useDraft<Draft extends object>(first: Draft) {
  const [draft, setDraft] = useState(first);
  const set =
    <Key extends keyof Draft>(key: Key) =>
    (value: Draft[Key]) =>
      setDraft((now) => ({ ...now, [key]: value }));
  return { draft, set, setDraft };
}
