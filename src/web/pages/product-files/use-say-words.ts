import type { productFiles } from '../../../contract/index.ts';
import { say } from '../../../words/index.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';

export type Words = productFiles.Words;
export type SayWords = (words: Words) => string;

/** What somebody typed stands as it is; a sentence of ours is said on the workshop's clock. */
export function useSayWords(): SayWords {
  const timeZone = useTimeZone();
  return (words) => (typeof words === 'string' ? words : say(words, { timeZone }));
}
