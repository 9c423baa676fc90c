import { useSyncExternalStore } from 'react';
import type { Store } from './make-store.ts';

export const useStore = <T>(store: Store<T>): T => useSyncExternalStore(store.watch, store.read);
