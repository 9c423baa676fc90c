import type { Saying } from '../../contract/index.ts';
import { say } from '../../words/index.ts';

/** Titles leave as text: they are names of things, with hardly a word of their own. */
export const titleOf = (code: string, parameters: Saying['parameters']): string => say({ code, parameters });
