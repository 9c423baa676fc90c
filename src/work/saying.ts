import type { Saying } from '../contract/index.ts';

/** A sentence as data; words/ says it. */
export const saying = (code: string, parameters: Saying['parameters'] = {}): Saying => ({ code, parameters });
