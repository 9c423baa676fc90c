import { say } from '../../words/index.ts';
import type { Words } from './write-chapter.ts';

/** What a person typed stands as it is; a sentence of ours is said on the workshop's clock. */
export const sayWords = (words: Words, timeZone: string): string =>
  typeof words === 'string' ? words : say(words, { timeZone });
