import { useState } from 'react';
import { fillingWords } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Moment } from '../../parts/moment.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { showAmount } from '../../show/show-amount.ts';
import styles from './run.module.css';
import type { Run } from './run.ts';

/** A named person's decision after the checks; afterwards, who decided and when. */
export const ReleaseCard = ({ run }: { readonly run: Run }) => (
  <Card title={fillingWords.checks}>
    {run.closing && <p>{fillingWords.closed(run.closing.units, showAmount(run.closing.lostGrams, 'g'))}</p>}
    <ul className={styles.checks}>
      {run.checks.map((check) => (
        <li key={check.check}>
          <Answer check={check} /> <Sentence saying={check.detail} />
        </li>
      ))}
    </ul>
    {run.release ? (
      <p>
        <State kind={run.release.verdict === 'released' ? 'ready' : 'stop'}>
          {run.release.verdict === 'released'
            ? fillingWords.released(run.release.by)
            : fillingWords.rejected(run.release.by)}
        </State>{' '}
        <span className="soft">
          <Moment at={run.release.at} /> {run.release.reason}
        </span>
      </p>
    ) : (
      <Decide run={run} />
    )}
  </Card>
);

const Answer = ({ check: { isPassed, isToSee } }: { readonly check: Run['checks'][number] }) => {
  if (!isPassed) return <State kind="stop">{fillingWords.failed}</State>;
  return isToSee ? (
    <State kind="watch">{fillingWords.look}</State>
  ) : (
    <State kind="ready">{fillingWords.passed}</State>
  );
};

function Decide({ run }: { readonly run: Run }) {
  const [reason, setReason] = useState('');
  const release = useWrite('releaseRun');
  const decide = (verdict: 'released' | 'rejected') =>
    void release.write({ params: { id: run.id }, body: { verdict, reason } });
  return (
    <Form label={fillingWords.releaseTitle} problems={release.problems} onSubmit={() => decide('released')}>
      <p>{fillingWords.releaseSays}</p>
      <Field
        label={fillingWords.reason}
        where="reason"
        value={reason}
        onChange={setReason}
        isOptional
        isBench
      />
      <FormActions>
        <Button
          type="submit"
          isAct
          isBench
          isBusy={release.isBusy}
          isDisabled={run.checks.some((check) => !check.isPassed)}
        >
          {fillingWords.release}
        </Button>
        <Button isStop isBench isBusy={release.isBusy} onPress={() => decide('rejected')}>
          {fillingWords.reject}
        </Button>
      </FormActions>
    </Form>
  );
}
