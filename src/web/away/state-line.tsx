import { awayWords } from '../../words/index.ts';
import { connection } from '../api/connection.ts';
import { useStore } from '../api/use-store.ts';
import { State, type StateKind } from '../parts/state.tsx';
import { door } from './door.ts';
import { isSending, onTablet } from './outbox.ts';

/** Where the entries are: on this tablet, on their way, at the workshop. Told politely, once it changes. */
export function StateLine() {
  const { waiting, isLasting } = useStore(onTablet);
  const isOnItsWay = useStore(isSending);
  const shut = useStore(door);
  const isSilent = useStore(connection) === 'silent';
  const [kind, words] = say({ count: waiting.length, isLasting, isOnItsWay, shut, isSilent });
  return (
    <span role="status">
      <State kind={kind}>{words}</State>
    </span>
  );
}

interface Facts {
  readonly count: number;
  readonly isLasting: boolean;
  readonly isOnItsWay: boolean;
  readonly shut: 'device-not-paired' | 'person-locked' | null;
  readonly isSilent: boolean;
}

function say({ count, isLasting, isOnItsWay, shut, isSilent }: Facts): readonly [StateKind, string] {
  if (count > 0 && !isLasting) return ['stop', awayWords.notLasting(count)];
  if (count > 0 && shut === 'device-not-paired') return ['watch', awayWords.needsPairing(count)];
  if (count > 0 && shut === 'person-locked') return ['watch', awayWords.needsPerson(count)];
  if (isOnItsWay && !isSilent) return ['going', awayWords.sending(count)];
  if (count > 0) return ['watch', awayWords.waiting(count)];
  return isSilent ? ['watch', awayWords.away] : ['ready', awayWords.saved];
}
