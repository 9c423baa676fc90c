import { useStore } from '../api/use-store.ts';
import type { KeptEntry } from './kept-entry.ts';
import { onTablet } from './outbox.ts';
import { sentEntries } from './sent-entries.ts';

/** What the workshop has not told of yet for one batch or run, in order. */
export function useKept(id: string): readonly KeptEntry[] {
  const { waiting } = useStore(onTablet);
  const sent = useStore(sentEntries).map(({ entry }) => entry);
  return [...sent, ...waiting].filter(({ params }) => params.id === id);
}

/** What of it the workshop does not have yet. */
export const useWaiting = (id: string): readonly KeptEntry[] =>
  useStore(onTablet).waiting.filter(({ params }) => params.id === id);
