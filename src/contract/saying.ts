import type { Saying } from './fields.ts';

/** A sentence as data; words/ says it. */
export const saying = (code: string, parameters: Saying['parameters'] = {}): Saying => ({ code, parameters });
