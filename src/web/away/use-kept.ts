import { useStore } from '../api/use-store.ts';
import type { KeptEntry } from './kept-entry.ts';
import { onTablet } from './outbox.ts';

/** What lies on this tablet for one batch or run, and what arrived a moment ago, in order. */
export function useKept(id: string): readonly KeptEntry[] {
  const { sent, waiting } = useStore(onTablet);
  return [...sent, ...waiting].filter(({ params }) => params.id === id);
}

/** What of it the workshop does not have yet. */
export const useWaiting = (id: string): readonly KeptEntry[] =>
  useStore(onTablet).waiting.filter(({ params }) => params.id === id);
