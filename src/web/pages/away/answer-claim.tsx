import { useState } from 'react';
import { away } from '../../../contract/index.ts';
import { awayWords } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { CheckBox } from '../../parts/check-box.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { Moment } from '../../parts/moment.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import type { Claim } from './claim-line.tsx';
import styles from './claims.module.css';
import { listWays } from './list-ways.ts';

const { claims: words } = awayWords;

/** What is to become of it, said by a named person: both stand, the one takes the other's place, or it is set aside. */
export function AnswerClaim({ claim, onClose }: { readonly claim: Claim; readonly onClose: () => void }) {
  const ways = listWays(claim);
  const [way, setWay] = useState(ways[0] ?? 'aside');
  const [reason, setReason] = useState('');
  const likelyAt = claim.mayEnter?.likelyAt ?? null;
  const [isClockWrong, setClockWrong] = useState(likelyAt !== null);
  /** Questions of the bench that were said yes to here. */
  const [sure, setSure] = useState<readonly string[]>([]);
  const answer = useWrite('answerClaim');
  const asked = answer.problems.map(({ code }) => code).filter((code) => away.benchQuestions.has(code));
  async function submit() {
    const isEntered = way !== 'aside';
    const saidYes = [...new Set([...sure, ...asked])];
    setSure(saidYes);
    const body = {
      how: isEntered ? ('enter' as const) : ('aside' as const),
      reason,
      strikes: way === 'instead' ? (claim.mayEnter?.instead?.entryId ?? null) : null,
      at: isEntered && isClockWrong ? likelyAt : null,
      sure: saidYes,
    };
    if (await answer.write({ params: { id: claim.id }, body })) onClose();
  }
  return (
    <Dialog title={words.answerTitle} isOpen onClose={onClose} isHeld={reason !== ''}>
      <Form label={words.answerTitle} problems={answer.problems} onSubmit={() => void submit()}>
        <RadioChoice
          isBench
          title={words.whichAnswer}
          choices={ways.map((id) => ({ id, name: words.ways[id] }))}
          value={way}
          onChange={(id) => {
            setWay(id as typeof way);
            answer.forget();
          }}
        />
        {likelyAt !== null && way !== 'aside' && (
          <CheckBox isChecked={isClockWrong} onChange={setClockWrong}>
            {words.wrongClock} <Moment at={likelyAt} />
          </CheckBox>
        )}
        <div className={styles.reasons}>
          {words.usual[way].map((usual) => (
            <Button key={usual} isBench onPress={() => setReason(usual)}>
              {usual}
            </Button>
          ))}
        </div>
        <Field label={words.reason} where="reason" value={reason} onChange={setReason} isBench />
        <Button
          type="submit"
          isAct
          isBench
          isWide
          isBusy={answer.isBusy}
          isDisabled={reason.trim() === '' && answer.problems.length === 0}
        >
          {asked.length > 0 ? words.yes : words.keep}
        </Button>
      </Form>
    </Dialog>
  );
}
