import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { awayWords, sayTime, shellWords } from '../../words/index.ts';
import { call } from '../api/call.ts';
import { connection } from '../api/connection.ts';
import { useStore } from '../api/use-store.ts';
import { useTimeZone } from '../api/use-time-zone.ts';
import { knownAt } from '../away/known-at.ts';
import { Button } from '../parts/button.tsx';
import { State } from '../parts/state.tsx';
import { ClockBanner } from './clock-banner.tsx';
import styles from './shell.module.css';

/** Often enough that nobody waits for it, seldom enough not to matter (common practice, no source). */
const ASK_EVERY_MS = 4_000;

export function TroubleBanner() {
  const isSilent = useStore(connection) === 'silent';
  const since = useStore(knownAt);
  const timeZone = useTimeZone();
  const queryClient = useQueryClient();
  useEffect(() => {
    if (!isSilent) return;
    // A refusal is an answer too; silence has been noted by `call` already, and the banner says so.
    const ask = () =>
      call('getHealth').then(
        () => queryClient.invalidateQueries(),
        () => undefined,
      );
    const timer = setInterval(ask, ASK_EVERY_MS);
    return () => clearInterval(timer);
  }, [isSilent, queryClient]);
  return (
    <div role="status">
      {isSilent && (
        <div className={styles.banner}>
          <p>
            <State kind="watch">
              {since === null ? shellWords.silent.says : awayWords.knownAt(sayTime(since, timeZone))}
            </State>{' '}
            <span data-spare>{awayWords.awaySays}</span>
          </p>
          <Button onPress={() => void queryClient.invalidateQueries()}>{shellWords.silent.again}</Button>
        </div>
      )}
      <ClockBanner />
    </div>
  );
}
