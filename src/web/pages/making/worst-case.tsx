import { useState } from 'react';
import { makingWords, worstCaseWords as words } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import type { Batch } from './batch.ts';
import styles from './bench.module.css';

type Worst = NonNullable<Batch['worstCase']>;

/** After the last addition: whether the errors of the scales may break a limit, and the ways out. */
export function WorstCase({ batch }: { readonly batch: Batch }) {
  const [isAsked, setAsked] = useState(false);
  const { worstCase: worst } = batch;
  if (worst === null) return null;
  // What is over already is not told to keep its limits at the errors of the scales.
  if (!worst.isHeld && batch.asWeighed !== null) return null;
  if (!worst.isHeld)
    return (
      <p>
        <State kind="ready">{words.kept}</State>
      </p>
    );
  return (
    <div className={styles.wrong}>
      <State kind={worst.decided?.verdict === 'accepted' ? 'watch' : 'stop'}>{words.held}</State>
      <ul>
        {worst.over.map((each) => (
          <li key={JSON.stringify(each)}>
            <Sentence saying={each} />
          </li>
        ))}
      </ul>
      {worst.decided ? (
        <p>{words.decided(worst.decided.verdict, worst.decided.by, worst.decided.reason)}</p>
      ) : (
        <Ways worst={worst} isMaking={batch.state === 'making'} />
      )}
      <Button isBench={batch.state === 'making'} onPress={() => setAsked(true)}>
        {worst.decided ? words.decideAgain : words.decide}
      </Button>
      {isAsked && <Decide batchId={batch.id} worst={worst} onClose={() => setAsked(false)} />}
    </div>
  );
}

const Ways = ({ worst, isMaking }: { readonly worst: Worst; readonly isMaking: boolean }) => (
  <>
    {isMaking && <p>{words.ways}</p>}
    {isMaking && (
      <ul>
        {worst.ways.map(({ says, room }) => (
          <li key={JSON.stringify(says)}>
            <Sentence saying={says} />{' '}
            {room.map((each) => (
              <span key={JSON.stringify(each.says)}>
                <State kind={each.isThere ? 'ready' : 'stop'}>
                  <Sentence saying={each.says} />
                </State>{' '}
              </span>
            ))}
          </li>
        ))}
        {worst.ways.length === 0 && <li>{words.noWay}</li>}
      </ul>
    )}
    <p>{isMaking ? words.orElse(makingWords.abandon) : words.orDecide}</p>
  </>
);

interface DecideProps {
  readonly batchId: string;
  readonly worst: Worst;
  readonly onClose: () => void;
}

function Decide({ batchId, worst, onClose }: DecideProps) {
  const [reason, setReason] = useState('');
  const decide = useWrite('decideWorstCase');
  async function submit(verdict: 'accepted' | 'refused') {
    const body = { verdict, reason, upon: worst.upon };
    if (await decide.write({ params: { id: batchId }, body })) onClose();
  }
  return (
    <Dialog title={words.decide} isOpen onClose={onClose} isHeld={reason !== ''}>
      <Form label={words.decide} problems={decide.problems} onSubmit={() => void submit('accepted')}>
        <p className="soft">{words.decideSays}</p>
        <Field label={words.reason} where="reason" kind="long" value={reason} onChange={setReason} isFirst />
        <FormActions>
          <Button type="submit" isAct isBusy={decide.isBusy}>
            {words.accept}
          </Button>
          <Button isStop isBusy={decide.isBusy} onPress={() => void submit('refused')}>
            {words.refuse}
          </Button>
        </FormActions>
      </Form>
    </Dialog>
  );
}
