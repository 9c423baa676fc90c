import { scaleWords } from '../../words/index.ts';
import { Button } from '../parts/button.tsx';
import { ShownReading } from './shown-reading.tsx';
import styles from './take-reading.module.css';
import { useScaleReading } from './use-scale-reading.ts';

/** What the connected scale shows, and one tap that takes it into the field. Nothing where none is connected. */
export function TakeReading({ onTake }: { readonly onTake: (grams: string) => void }) {
  const { isConnected, grams, isStable } = useScaleReading();
  if (!isConnected) return null;
  return (
    <div className={styles.row}>
      <ShownReading />
      <Button
        isBench
        isDisabled={grams === null || !isStable}
        onPress={() => grams !== null && onTake(grams)}
      >
        {scaleWords.reader.take}
      </Button>
    </div>
  );
}
