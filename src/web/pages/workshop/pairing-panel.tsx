import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { reachWords, sayTime } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import reach from '../../reach/reach.module.css';
import { SquareCode } from '../../reach/square-code.tsx';
import type { Network } from './reach-card.tsx';

type Pairing = NonNullable<Network['pairing']>;

const { pairing: words } = reachWords;

/** A wrong code is no entry, so nobody tells of it: asked so often while the code is open (common practice, no source). */
const LOOK_EVERY_MS = 3_000;

function useLookAgain(): void {
  const queryClient = useQueryClient();
  useEffect(() => {
    const look = () => void queryClient.invalidateQueries({ queryKey: ['getReach'] });
    const timer = setInterval(look, LOOK_EVERY_MS);
    return () => clearInterval(timer);
  }, [queryClient]);
}

interface Props {
  readonly pairing: Pairing;
  readonly fingerprint: string | null;
}

/** The code, large enough to be read across the room, and the square that holds it with the address. */
export function PairingPanel({ pairing, fingerprint }: Props) {
  useLookAgain();
  const close = useWrite('closePairing');
  const timeZone = useTimeZone();
  const [chosen, setChosen] = useState('');
  const way = pairing.ways.find(({ address }) => address === chosen) ?? pairing.ways[0];
  const end = async () => {
    if (await close.write({ body: {} })) tell(words.closed);
  };
  return (
    <section className={reach.panel} aria-label={words.title}>
      <p>
        <strong>{words.how}</strong>
      </p>
      <ol className={reach.steps}>
        <li className={reach.hint}>
          {pairing.hint === null ? (
            words.noHint
          ) : (
            <>
              {words.first} <code>{pairing.hint}</code>
            </>
          )}
        </li>
        {fingerprint !== null && (
          <li className={reach.hint}>
            {words.compare} <code className={reach.fingerprint}>{fingerprint}</code>
          </li>
        )}
        <li className={reach.hint}>
          {words.next}
          {way && (
            <p>
              <code>{way.url}</code>
            </p>
          )}
        </li>
      </ol>
      {way && <SquareCode code={way.code} label={reachWords.codeAlt(way.url)} />}
      {pairing.ways.length > 1 && (
        <RadioChoice
          title={reachWords.wayIn}
          choices={pairing.ways.map(({ address }) => ({ id: address, name: address }))}
          value={way?.address ?? ''}
          onChange={setChosen}
        />
      )}
      <div>
        <p className="soft">{words.code}</p>
        <p className={reach.code}>
          {pairing.code.slice(0, 4)} {pairing.code.slice(4)}
        </p>
        <p className="soft">
          {words.until(sayTime(pairing.until, timeZone))}{' '}
          {pairing.triesLeft < 5 && words.triesLeft(pairing.triesLeft)}
        </p>
      </div>
      <div>
        <Button onPress={() => void end()} isBusy={close.isBusy}>
          {words.close}
        </Button>
      </div>
    </section>
  );
}
