import { scaleWords } from '../../words/index.ts';
import { Button } from '../parts/button.tsx';
import { takeShown } from './connected-scale.ts';
import { ShownReading } from './shown-reading.tsx';
import styles from './take-reading.module.css';
import { useScaleReading } from './use-scale-reading.ts';

/** What the connected scale shows, and one tap that takes it into the field. Nothing where none is connected. */
export function TakeReading({ onTake }: { readonly onTake: (grams: string) => void }) {
  const { isConnected, mayBeTaken } = useScaleReading();
  if (!isConnected) return null;
  function take(): void {
    // By the clock of this moment: a tablet that slept has drawn what the scale showed before.
    const grams = takeShown(Date.now());
    if (grams !== null) onTake(grams);
  }
  return (
    <div className={styles.row}>
      <ShownReading />
      <Button isBench isDisabled={!mayBeTaken} onPress={take}>
        {scaleWords.reader.take}
      </Button>
    </div>
  );
}
