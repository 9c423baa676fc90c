import { useState } from 'react';
import { makingWords } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import type { Batch } from './batch.ts';
import { DeviationDialog, type DeviationSaid } from './deviation-dialog.tsx';

interface Props {
  readonly batch: Batch;
  readonly screen: number | null;
}

/** Anything done differently that no weight tells: another pan, a longer hold. */
export function Deviation({ batch, screen }: Props) {
  const [isOpen, setOpen] = useState(false);
  const save = useBenchWrite('recordDeviation');
  /** What was refused stays open with its text: nothing that was typed is lost. */
  async function keep(said: DeviationSaid): Promise<void> {
    if (await save.write({ params: { id: batch.id }, body: { screen, ...said } })) setOpen(false);
  }
  return (
    <>
      <Button isBench onPress={() => setOpen(true)}>
        {makingWords.differently}
      </Button>
      <DeviationDialog
        key={batch.deviations.length}
        title={makingWords.differentlyTitle}
        isOpen={isOpen}
        problems={save.problems}
        isBusy={save.isBusy}
        onClose={() => {
          setOpen(false);
          save.forget();
        }}
        onSaid={(said) => void keep(said)}
      />
    </>
  );
}
