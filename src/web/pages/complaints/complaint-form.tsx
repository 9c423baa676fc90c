import { complaintWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import type { AnswerOf, BodyOf } from '../../api/shapes.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import type { Effect, Mark } from './complaint.ts';
import { EffectFields } from './effect-fields.tsx';

type Details = BodyOf<'enterComplaint'>['details'];
type Kind = Details['kind'];

interface Props {
  readonly products: AnswerOf<'listProducts'>;
  readonly runs: AnswerOf<'listRuns'>;
  readonly today: string;
  readonly first: { readonly productId: string; readonly runId: string };
}

const KINDS = Object.entries(complaintWords.kinds).map(([id, name]) => ({ id, name }));
const PLACES = Object.entries(complaintWords.places).map(([id, name]) => ({ id, name }));
const isHealth = (kind: string): boolean => kind === 'skin-reaction' || kind === 'other-health';

/** What was said, of which tin, and what it counts as. */
export function ComplaintForm({ products, runs, today, first }: Props) {
  const { draft, set, setDraft, isChanged } = useDraft({
    ...first,
    receivedOn: today,
    kind: 'skin-reaction' as Kind,
    said: '',
    effect: 'undesirable' as Effect,
    marks: [] as readonly Mark[],
    happenedIn: '',
  });
  const save = useWrite('enterComplaint');
  const letGo = useUnsaved(isChanged, save);
  const goTo = useGoTo();
  async function submit() {
    const { productId, runId, receivedOn, happenedIn, marks, ...rest } = draft;
    const details = {
      ...rest,
      marks: [...marks],
      happenedIn: happenedIn === '' ? null : (happenedIn as NonNullable<Details['happenedIn']>),
    };
    const body = { productId, runId: runId === '' ? null : runId, receivedOn, details };
    const kept = await save.write({ body });
    if (!kept) return;
    letGo();
    tell(complaintWords.saved);
    goTo(`/complaints/${kept.id}`);
  }
  const ofProduct = runs.filter((run) => run.productId === draft.productId);
  return (
    <Card>
      <Form label={complaintWords.newTitle} problems={save.problems} onSubmit={() => void submit()}>
        <SideBySide>
          <Select
            label={complaintWords.product}
            where="productId"
            value={draft.productId}
            onChange={(productId) => setDraft({ ...draft, productId, runId: '' })}
            choices={products.map(({ id, details }) => ({ id, name: details.name }))}
          />
          <Select
            label={complaintWords.batch}
            where="runId"
            value={draft.runId}
            onChange={set('runId')}
            none={complaintWords.noBatch}
            choices={ofProduct.map(({ id, number }) => ({ id, name: number }))}
          />
        </SideBySide>
        <DateField
          label={complaintWords.receivedOn}
          where="receivedOn"
          value={draft.receivedOn}
          onChange={set('receivedOn')}
        />
        <Select
          label={complaintWords.kind}
          where="details.kind"
          value={draft.kind}
          onChange={(kind) =>
            setDraft({
              ...draft,
              kind: kind as Kind,
              effect: isHealth(kind) ? 'undesirable' : 'none',
              marks: [],
            })
          }
          choices={KINDS}
        />
        <Field
          label={complaintWords.said}
          where="details.said"
          kind="long"
          value={draft.said}
          onChange={set('said')}
          hint={complaintWords.saidHint}
        />
        <EffectFields
          label={complaintWords.effect}
          where="details.effect"
          effect={draft.effect}
          marks={draft.marks}
          onChange={(effect, marks) => setDraft({ ...draft, effect: effect === '' ? 'none' : effect, marks })}
        />
        <Select
          label={complaintWords.happenedIn}
          where="details.happenedIn"
          value={draft.happenedIn}
          onChange={set('happenedIn')}
          none={complaintWords.placeUnknown}
          choices={PLACES}
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
