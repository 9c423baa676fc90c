import { useState } from 'react';
import { weighInWords as words } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Addition, Batch } from './batch.ts';
import styles from './mishap.module.css';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly lotId: string;
  /** What the scale showed, as far as anything is typed. */
  readonly grams: string;
  /** A weighing that was entered already: it is struck with it. */
  readonly entryId: string | null;
  readonly onClose: () => void;
}

/** Weighed out and spilt before it went in: how much, and in one tap why. */
export function SpillForm({ batch, screen, lotId, grams: first, entryId, onClose }: Props) {
  const [grams, setGrams] = useState(first);
  const [reason, setReason] = useState('');
  const spill = useBenchWrite('recordSpill');
  const isComplete = grams.trim() !== '' && reason.trim() !== '';
  async function submit(): Promise<void> {
    if (!isComplete) return;
    const body = { position: screen.position, lotId, grams: typedDecimal(grams), reason, entryId };
    if (await spill.write({ params: { id: batch.id }, body })) onClose();
  }
  return (
    <Form label={words.spiltTitle(screen.itemName)} problems={spill.problems} onSubmit={() => void submit()}>
      {entryId !== null && <p className="soft">{words.spiltAll}</p>}
      <Field
        label={words.spiltGrams}
        where="grams"
        kind="decimal"
        unit="g"
        value={grams}
        onChange={setGrams}
        isBench
        isFirst
      />
      <div className={styles.whys}>
        {words.spiltWhys.map((why) => (
          <Button key={why} isBench isAct={reason === why} onPress={() => setReason(why)}>
            {why}
          </Button>
        ))}
      </div>
      <Field label={words.spiltWhy} where="reason" value={reason} onChange={setReason} isBench />
      <Button type="submit" isStop isBench isWide isBusy={spill.isBusy} isDisabled={!isComplete}>
        {words.spiltTap}
      </Button>
    </Form>
  );
}
