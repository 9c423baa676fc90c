import { useState } from 'react';
import { makingWords } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import type { Batch } from './batch.ts';
import { DeviationDialog } from './deviation-dialog.tsx';

interface Props {
  readonly batch: Batch;
  readonly screen: number | null;
}

/** Anything done differently that no weight tells: another pan, a longer hold. */
export function Deviation({ batch, screen }: Props) {
  const [isOpen, setOpen] = useState(false);
  const save = useBenchWrite('recordDeviation');
  return (
    <>
      <Button isBench onPress={() => setOpen(true)}>
        {makingWords.differently}
      </Button>
      <Problems problems={save.problems} />
      <DeviationDialog
        key={batch.deviations.length}
        title={makingWords.differentlyTitle}
        isOpen={isOpen}
        onClose={() => setOpen(false)}
        onSaid={(said) => {
          setOpen(false);
          void save.write({ params: { id: batch.id }, body: { screen, ...said } });
        }}
      />
    </>
  );
}
