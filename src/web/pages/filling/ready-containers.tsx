import { useState } from 'react';
import { cleaningWords, readyWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import type { AskProps } from './ready-card.tsx';
import styles from './run.module.css';

type Method = keyof typeof cleaningWords;
const METHODS = Object.keys(cleaningWords) as Method[];

/** How the tins were made clean: a tap each; only what is none of them is written. */
export function ReadyContainers({ isBusy, onSay, onLater }: AskProps) {
  const [isOther, setOther] = useState(false);
  const [remark, setRemark] = useState('');
  const say = (method: Method) => onSay({ kind: 'containers', method, remark });
  return (
    <>
      <h3>{readyWords.containersTitle}</h3>
      <div className={styles.taps}>
        {METHODS.map((method) => (
          <Button
            key={method}
            isBench
            isWide
            isBusy={isBusy}
            onPress={() => (method === 'other' ? setOther(true) : say(method))}
          >
            {upFirst(cleaningWords[method])}
          </Button>
        ))}
      </div>
      {isOther && (
        <Form label={readyWords.containersTitle} problems={[]} onSubmit={() => say('other')}>
          <Field
            label={readyWords.remark}
            where="word.remark"
            value={remark}
            onChange={setRemark}
            isBench
            isFirst
          />
          <Button type="submit" isAct isBench isBusy={isBusy} isDisabled={remark.trim() === ''}>
            {readyWords.send}
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

const upFirst = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
