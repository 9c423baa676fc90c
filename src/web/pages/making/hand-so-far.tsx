import { exact, sumOf, toText } from '../../../core/quantity/index.ts';
import { handWords as words } from '../../../words/index.ts';
import type { Batch } from './batch.ts';
import styles from './mishap.module.css';
import { StrikeAddition } from './strike-addition.tsx';

/** What is in so far, in its order, with its share; each weighing may be struck. */
export function HandSoFar({ batch }: { readonly batch: Batch }) {
  const total = sumOf(
    batch.screens.flatMap((screen) => (screen.kind === 'addition' ? [screen.inGrams] : [])),
  );
  const percentOf = (grams: string) =>
    total.isZero() ? '0' : toText(exact(grams).times(100).div(total).toDecimalPlaces(2));
  return (
    <section>
      <h2>{words.soFar}</h2>
      <div className={styles.parts}>
        {batch.screens.map((screen) =>
          screen.kind === 'step' ? (
            <p key={screen.screen} className="soft">
              {screen.what}
            </p>
          ) : (
            screen.entries.map((entry) => (
              <div key={entry.entryId} className={styles.part}>
                <p>{words.soFarLine(screen.itemName, entry.actualGrams, percentOf(entry.actualGrams))}</p>
                <StrikeAddition batch={batch} entryId={entry.entryId} />
              </div>
            ))
          ),
        )}
        <p>
          <strong>{words.sum(toText(total))}</strong>
        </p>
      </div>
    </section>
  );
}
