import type { Saying } from '../../contract/index.ts';
import { say } from '../../words/index.ts';
import { useTimeZone } from '../api/use-time-zone.ts';
import { KeepNumbers } from './keep-numbers.tsx';

/** A sentence that came as data, said on the workshop's clock. */
export const Sentence = ({ saying }: { readonly saying: Saying }) => (
  <KeepNumbers>{say(saying, { timeZone: useTimeZone() })}</KeepNumbers>
);
