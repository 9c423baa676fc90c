import { useState } from 'react';
import { checkWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { findFormer } from './find-former.ts';
import { FormerlyDecided } from './formerly-decided.tsx';
import type { Question } from './question-state.tsx';
import { SaidDecision } from './said-decision.tsx';

interface Props {
  readonly revisionId: string;
  readonly question: Question;
  readonly former: AnswerOf<'listFormerDecisions'>;
  readonly onClose: () => void;
}

/** One question, decided by a named person with a reason; decided anew, or taken back, where it was decided before. */
export function DecideQuestion({ revisionId, question, former, onClose }: Props) {
  const [reason, setReason] = useState('');
  const decide = useWrite('decideUnknown');
  const { substance, decided } = question;
  const title = decided ? checkWords.changeTitle(substance) : checkWords.decideTitle(substance);
  async function submit(verdict: 'accepted' | 'refused' | 'open-again') {
    const { key, upon } = question;
    const corrects = decided ? { corrects: decided.entryId } : {};
    const kept = await decide.write({
      params: { id: revisionId },
      body: { key, verdict, reason, upon, ...corrects },
    });
    if (kept) onClose();
  }
  return (
    <Dialog title={title} isOpen onClose={onClose} isHeld={reason !== ''}>
      <p>
        <strong>
          <Sentence saying={question.why} />
        </strong>{' '}
        ({question.markets.map((market) => checkWords.market[market]).join(', ')})
      </p>
      {decided && (
        <p>
          {checkWords.soFar} <SaidDecision decision={decided} />
        </p>
      )}
      {!decided && <FormerlyDecided decisions={findFormer(question, former)} />}
      <p className="soft">{decided ? checkWords.changeSays : checkWords.decideSays}</p>
      <Form label={title} problems={decide.problems} onSubmit={() => void submit('accepted')}>
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
            {checkWords.accept(substance)}
          </Button>
          <Button isStop isBusy={decide.isBusy} onPress={() => void submit('refused')}>
            {checkWords.refuse(substance)}
          </Button>
          {decided && (
            <Button isBusy={decide.isBusy} onPress={() => void submit('open-again')}>
              {checkWords.takeBack}
            </Button>
          )}
        </FormActions>
      </Form>
    </Dialog>
  );
}
