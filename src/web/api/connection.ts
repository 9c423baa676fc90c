import { makeStore } from './make-store.ts';

/** Whether the workshop's computer answered the last time it was asked. */
export const connection = makeStore<'answers' | 'silent'>('answers');
