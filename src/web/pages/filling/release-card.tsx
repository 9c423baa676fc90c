import { useState } from 'react';
import { closeWords, fillingWords, sayDateWithYear } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Moment } from '../../parts/moment.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { usePersonNow } from '../../shell/use-person-now.ts';
import { showAmount } from '../../show/show-amount.ts';
import { listWays } from './release-ways.ts';
import styles from './run.module.css';
import type { Run } from './run.ts';

type Check = Run['checks'][number];

/** A named person's decision after the checks; afterwards, who decided and when. */
export const ReleaseCard = ({ run }: { readonly run: Run }) => (
  <Card title={fillingWords.checks}>
    {run.closing && <p>{fillingWords.closed(run.closing.units, showAmount(run.closing.lostGrams, 'g'))}</p>}
    <LeftOver run={run} />
    {run.closing?.loss && (
      <p>
        <State kind={run.closing.loss.isAbnormal ? 'watch' : 'ready'}>
          <Sentence saying={run.closing.loss.says} />
        </State>
      </p>
    )}
    <ul className={styles.checks}>
      {[...run.checks].sort(byUrgency).map((check) => (
        <li key={check.check}>
          <Answer check={check} /> <Sentence saying={check.detail} />
          {!run.release && !check.isPassed && <Ways run={run} check={check} />}
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

/** What went back to the shelf is a lot of its own, with its date, and can be filled later. */
function LeftOver({ run: { closing, batchId } }: { readonly run: Run }) {
  if (!closing?.leftLot) return null;
  const { id, number, bestBefore } = closing.leftLot;
  return (
    <p>
      <TextLink to={`/shelf/lots/${id}`}>{closeWords.leftOnShelf(closing.leftGrams, number)}</TextLink>
      {bestBefore !== null && `, ${closeWords.leftUntil(sayDateWithYear(bestBefore))}`}.{' '}
      <TextLink to={`/making/${batchId}/fill`}>{closeWords.fillLeft}</TextLink>
    </p>
  );
}

/** What is not passed first, then what is to be looked at; otherwise as the checks come. */
const byUrgency = (one: Check, other: Check): number => rankOf(one) - rankOf(other);
const rankOf = ({ isPassed, isToSee }: Check): number => (!isPassed ? 0 : isToSee ? 1 : 2);

const Ways = ({ run, check }: { readonly run: Run; readonly check: Check }) => (
  <p className={styles.ways}>
    {listWays(run, check).map(({ words, to }) => (
      <TextLink key={to} to={to}>
        {words}
      </TextLink>
    ))}
  </p>
);

const Answer = ({ check: { isPassed, isToSee } }: { readonly check: Check }) => {
  if (!isPassed) return <State kind="stop">{fillingWords.failed}</State>;
  return isToSee ? (
    <State kind="watch">{fillingWords.look}</State>
  ) : (
    <State kind="ready">{fillingWords.passed}</State>
  );
};

function Decide({ run }: { readonly run: Run }) {
  const { person } = usePersonNow();
  const [reason, setReason] = useState('');
  const release = useWrite('releaseRun');
  const decide = (verdict: 'released' | 'rejected') =>
    void release.write({ params: { id: run.id }, body: { verdict, reason } });
  const failing = run.checks.filter((check) => !check.isPassed).length;
  return (
    <Form label={fillingWords.releaseTitle} problems={release.problems} onSubmit={() => decide('released')}>
      {failing === 0 ? (
        <p>
          {fillingWords.releaseSays}{' '}
          {person && <strong>{fillingWords.releaseAs(person.name, run.closing?.units ?? 0)}</strong>}
        </p>
      ) : (
        <p>
          <State kind="stop">{fillingWords.mayNotRelease(failing)}</State>
        </p>
      )}
      <Field
        label={fillingWords.reason}
        where="reason"
        value={reason}
        onChange={setReason}
        isOptional
        isBench
      />
      <FormActions>
        <Button type="submit" isAct isBench isBusy={release.isBusy} isDisabled={failing > 0}>
          {fillingWords.release}
        </Button>
        <Button isStop isBench isBusy={release.isBusy} onPress={() => decide('rejected')}>
          {fillingWords.reject}
        </Button>
      </FormActions>
    </Form>
  );
}
