import { useState } from 'react';
import { readyWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import type { AskProps } from './ready-card.tsx';
import styles from './run.module.css';

/** Line clearance: one tap where it is clear, a reason where it is not. */
export function ReadyArea({ isBusy, onSay, onLater }: AskProps) {
  const [isNot, setNot] = useState(false);
  const [reason, setReason] = useState('');
  return (
    <>
      <h3>{readyWords.areaTitle}</h3>
      <p>{readyWords.areaSays}</p>
      <div className={styles.taps}>
        <Button
          isAct
          isBench
          isWide
          isBusy={isBusy}
          onPress={() => onSay({ kind: 'area', isClear: true, reason: '' })}
        >
          {readyWords.areaClear}
        </Button>
        {!isNot && (
          <Button isBench isWide onPress={() => setNot(true)}>
            {readyWords.areaNot}
          </Button>
        )}
      </div>
      {isNot && (
        <Form
          label={readyWords.areaNot}
          problems={[]}
          onSubmit={() => onSay({ kind: 'area', isClear: false, reason })}
        >
          <Field
            label={readyWords.areaWhy}
            where="word.reason"
            value={reason}
            onChange={setReason}
            isBench
            isFirst
          />
          <Button type="submit" isStop isBench isBusy={isBusy} isDisabled={reason.trim() === ''}>
            {readyWords.areaSend}
          </Button>
        </Form>
      )}
      {onLater && (
        <Button isBench onPress={onLater}>
          {readyWords.later}
        </Button>
      )}
    </>
  );
}
