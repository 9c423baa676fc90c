import { useState } from 'react';
import { keptInTab } from './kept.ts';

type Texts = Readonly<Record<string, string>>;

function readDraft<Draft extends Texts>(key: string, first: Draft): Draft {
  try {
    const read: unknown = JSON.parse(keptInTab.read(key) ?? '{}');
    const known = Object.entries(read ?? {}).filter(
      ([name, value]) => name in first && typeof value === 'string',
    );
    return { ...first, ...Object.fromEntries(known) };
  } catch {
    // Not ours, or written by another edition of the page: the form begins anew.
    return first;
  }
}

/**
 * Typed text that comes through a reload or a sleeping tablet: kept in this tab under `key`, field by field, until
 * `forget` is called once a write was accepted.
 */
export function useKeptDraft<Draft extends Texts>(key: string, first: Draft) {
  const [draft, setDraft] = useState(() => readDraft(key, first));
  const put = (next: Draft): void => {
    setDraft(next);
    keptInTab.write(key, JSON.stringify(next) === JSON.stringify(first) ? null : JSON.stringify(next));
  };
  const set = (name: keyof Draft) => (value: string) => put({ ...draft, [name]: value });
  const take = (part: Partial<Draft>) => put({ ...draft, ...part });
  return { draft, set, take, forget: () => put(first) };
}
