import { makeStore } from '../api/make-store.ts';

/** Since when what a page shows is known, where the workshop was not there to ask: the oldest of what it shows. */
export const knownAt = makeStore<string | null>(null);

const moments = new Map<string, string>();

const tellOldest = (): void => knownAt.write([...moments.values()].sort()[0] ?? null);

/** An answer that was kept on this tablet. */
export function noteKnown(url: string, at: string): void {
  moments.set(url, at);
  tellOldest();
}

/** The workshop itself answered. */
export function noteFresh(url: string): void {
  if (moments.delete(url)) tellOldest();
}
