import { useState } from 'react';
import { lightWords } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Problems } from '../../parts/problems.tsx';
import styles from './run.module.css';
import type { Run, Weight } from './run.ts';

interface Props {
  readonly run: Run;
  readonly weight: Weight;
  readonly isBench?: boolean;
  readonly onDone?: () => void;
}

type Fate = NonNullable<Weight['fate']>;
const FATES: readonly Fate[] = ['bowl', 'trial', 'binned', 'slip'];

/** A tin that is taken out: what becomes of it is one tap, and its weight stays readable. */
export function PutAside({ run, weight, isBench = false, onDone }: Props) {
  const [isOpen, setOpen] = useState(false);
  const strike = useBenchWrite('strikeFill');
  async function take(fate: Fate) {
    const body = { entryId: weight.entryId, reason: lightWords.fates[fate], fate };
    const kept = await strike.write({ params: { id: run.id }, body });
    if (!kept) return;
    setOpen(false);
    onDone?.();
  }
  return (
    <>
      <Button isBench={isBench} label={lightWords.asideOf(weight.number)} onPress={() => setOpen(true)}>
        {lightWords.aside}
      </Button>
      <Dialog
        isBench
        title={lightWords.fateTitle(weight.number)}
        isOpen={isOpen}
        onClose={() => {
          strike.forget();
          setOpen(false);
        }}
      >
        <Problems problems={strike.problems} />
        <div className={styles.taps}>
          {FATES.map((fate) => (
            <Button key={fate} isBench isWide isBusy={strike.isBusy} onPress={() => void take(fate)}>
              {lightWords.fates[fate]}
            </Button>
          ))}
        </div>
      </Dialog>
    </>
  );
}
