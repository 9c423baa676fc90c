import { sayDecimal, scaleWords } from '../../words/index.ts';
import { State } from '../parts/state.tsx';
import styles from './take-reading.module.css';
import { useScaleReading } from './use-scale-reading.ts';

const { reader: words } = scaleWords;

/** What the connected scale shows; nothing where none is connected. */
export function ShownReading() {
  const { isConnected, grams, isStable, isRestless, isTaken, silentSeconds, told, trouble, name } =
    useScaleReading();
  if (!isConnected) return null;
  return (
    <div>
      <span className="soft">{words.shows(name)}</span>{' '}
      {grams !== null && (
        <>
          <strong className={styles.grams}>{sayDecimal(grams)} g</strong>{' '}
          {told && <span className="soft">{words.told(told.value, words.units[told.unit])} </span>}
          {silentSeconds === null && (
            <span aria-live="polite">
              <State kind={isStable ? 'ready' : 'going'}>{isStable ? words.settled : words.moving}</State>
            </span>
          )}
        </>
      )}
      {silentSeconds !== null && <State kind="watch">{words.silent(silentSeconds)}</State>}
      {isTaken && silentSeconds === null && <p className="soft">{words.isTaken}</p>}
      {trouble && <State kind="watch">{words.trouble[trouble]}</State>}
      {isRestless && <p aria-live="polite">{words.restless}</p>}
    </div>
  );
}
