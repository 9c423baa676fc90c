import { useState } from 'react';
import { checkWords } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import type { Check } from './check.ts';

type Question = Check['open'][number];

/** What no source tells: each is decided once for this revision, by a named person with a reason. */
export function OpenQuestions({ check }: { readonly check: Check }) {
  const [asked, setAsked] = useState<Question | null>(null);
  return (
    <>
      <Card title={checkWords.open} isFlush>
        <List rows={check.open} keyOf={(question) => question.key} empty={checkWords.noneOpen}>
          {(question) => (
            <>
              <ListRow>
                <span>{question.substance}</span>
                {question.decided ? (
                  <State kind={question.decided.verdict === 'accepted' ? 'ready' : 'stop'}>
                    {checkWords.decided(question.decided.verdict, question.decided.by)}
                  </State>
                ) : (
                  <State kind="watch">{checkWords.verdicts.unknown}</State>
                )}
              </ListRow>
              <p className="soft small">
                <Sentence saying={question.why} />
              </p>
              {question.lapsed && <Lapsed decision={question.lapsed} />}
              {question.decided ? (
                <p className="small">{question.decided.reason}</p>
              ) : (
                <ListFoot>
                  <span />
                  <Button
                    label={checkWords.decideTitle(question.substance)}
                    onPress={() => setAsked(question)}
                  >
                    {checkWords.decide}
                  </Button>
                </ListFoot>
              )}
            </>
          )}
        </List>
      </Card>
      {asked && (
        <Decide
          key={asked.key}
          revisionId={check.revisionId}
          question={asked}
          onClose={() => setAsked(null)}
        />
      )}
    </>
  );
}

const Lapsed = ({
  decision: { verdict, by, at, reason },
}: {
  readonly decision: NonNullable<Question['lapsed']>;
}) => (
  <p className="small">
    <Sentence saying={{ code: 'decision-lapsed', parameters: { verdict, by, on: at, reason } }} />
  </p>
);

interface Props {
  readonly revisionId: string;
  readonly question: Question;
  readonly onClose: () => void;
}

function Decide({ revisionId, question, onClose }: Props) {
  const [reason, setReason] = useState('');
  const decide = useWrite('decideUnknown');
  async function submit(verdict: 'accepted' | 'refused') {
    const kept = await decide.write({
      params: { id: revisionId },
      body: { key: question.key, verdict, reason, upon: question.upon },
    });
    if (kept) onClose();
  }
  return (
    <Dialog title={checkWords.decideTitle(question.substance)} isOpen onClose={onClose}>
      <p>{checkWords.decideSays}</p>
      <Form label={checkWords.decide} problems={decide.problems} onSubmit={() => void submit('accepted')}>
        <Field
          label={checkWords.reason}
          where="reason"
          kind="long"
          value={reason}
          onChange={setReason}
          hint={checkWords.reasonHint}
          isFirst
        />
        <FormActions>
          <Button type="submit" isAct isBusy={decide.isBusy}>
            {checkWords.accept}
          </Button>
          <Button isStop isBusy={decide.isBusy} onPress={() => void submit('refused')}>
            {checkWords.refuse}
          </Button>
        </FormActions>
      </Form>
    </Dialog>
  );
}
