import { complaintWords, sayInstant } from '../../../words/index.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { List } from '../../parts/list.tsx';
import { Select } from '../../parts/select.tsx';
import type { Complaint, Effect, Mark } from './complaint.ts';
import { EffectFields } from './effect-fields.tsx';

const STATES = Object.entries(complaintWords.states).map(([id, name]) => ({ id, name }));

/** What was found or done since; each stays, the last says how it stands. */
export function FollowCard({ complaint }: { readonly complaint: Complaint }) {
  const timeZone = useTimeZone();
  return (
    <>
      <Card title={complaintWords.follow} isFlush>
        <List rows={complaint.words} keyOf={({ entryId }) => entryId} empty={complaintWords.followNone}>
          {(word) => (
            <>
              <p>{word.said}</p>
              <p className="soft">
                {complaintWords.states[word.state]}
                {word.judged && ` · ${complaintWords.judgedAs(complaintWords.effects[word.judged.effect])}`} ·{' '}
                {complaintWords.by(word.by, sayInstant(word.at, timeZone))}
              </p>
            </>
          )}
        </List>
      </Card>
      <FollowForm key={complaint.words.length} complaint={complaint} />
    </>
  );
}

function FollowForm({ complaint }: { readonly complaint: Complaint }) {
  const { draft, set, setDraft, isChanged } = useDraft({
    said: '',
    state: (complaint.state === 'open' ? 'looked-into' : complaint.state) as Complaint['state'],
    effect: '' as Effect | '',
    marks: [] as readonly Mark[],
  });
  const save = useWrite('followComplaint');
  const letGo = useUnsaved(isChanged, save);
  async function submit() {
    const { said, state, effect, marks } = draft;
    const judged = effect === '' ? null : { effect, marks: [...marks] };
    if (await save.write({ params: { id: complaint.id }, body: { said, state, judged } })) letGo();
  }
  return (
    <Card title={complaintWords.followTitle}>
      <Form label={complaintWords.followTitle} problems={save.problems} onSubmit={() => void submit()}>
        <Field
          label={complaintWords.followSaid}
          where="said"
          kind="long"
          value={draft.said}
          onChange={set('said')}
          hint={complaintWords.saidHint}
        />
        <Select
          label={complaintWords.state}
          where="state"
          value={draft.state}
          onChange={(state) => set('state')(state as Complaint['state'])}
          choices={STATES}
        />
        <EffectFields
          label={complaintWords.judged}
          where="judged.effect"
          effect={draft.effect}
          marks={draft.marks}
          onChange={(effect, marks) => setDraft({ ...draft, effect, marks })}
          none={complaintWords.asBefore}
        />
        <FormActions>
          <Button type="submit" isAct isBusy={save.isBusy}>
            {complaintWords.save}
          </Button>
        </FormActions>
      </Form>
    </Card>
  );
}
