import { productFileWords } from '../../../words/index.ts';
import type { AnswerOf, BodyOf } from '../../api/shapes.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Select } from '../../parts/select.tsx';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';

export type Point = AnswerOf<'listPointsOfDeparture'>[number];
type Details = BodyOf<'savePointOfDeparture'>['details'];

const { worksheet: words } = productFileWords;
const ROUTES = Object.entries(words.routes).map(([id, name]) => ({ id, name }));

const draftOf = (point: Point | null) => ({
  name: point?.details.name ?? '',
  milligramsPerKgDay: point?.details.milligramsPerKgDay ?? '',
  route: (point?.details.route ?? 'oral') as Details['route'],
  bioavailabilityPercent: point?.details.bioavailabilityPercent ?? '',
  absorptionPercent: point?.details.absorptionPercent ?? '',
  source: point?.details.source ?? '',
});

interface Props {
  readonly point: Point | null;
  readonly onClose: () => void;
}

export function PointDialog({ point, onClose }: Props) {
  const { draft, set, isChanged } = useDraft(draftOf(point));
  const save = useWrite('savePointOfDeparture');
  const title = point ? words.changeOf(point.details.name) : words.add;
  async function submit(isTakenOut: boolean) {
    const details: Details = {
      ...draft,
      milligramsPerKgDay: typedDecimal(draft.milligramsPerKgDay),
      bioavailabilityPercent: typedDecimalOrNull(draft.bioavailabilityPercent),
      absorptionPercent: typedDecimalOrNull(draft.absorptionPercent),
      isTakenOut,
    };
    const which = point ? { id: point.id, version: point.version } : {};
    if (await save.write({ body: { ...which, details } })) onClose();
  }
  return (
    <Dialog title={title} isOpen onClose={onClose} isHeld={isChanged}>
      <Form label={title} problems={save.problems} onSubmit={() => void submit(false)}>
        <Field label={words.name} where="details.name" value={draft.name} onChange={set('name')} isFirst />
        <Field
          label={words.dose}
          where="details.milligramsPerKgDay"
          kind="decimal"
          unit={words.doseUnit}
          value={draft.milligramsPerKgDay}
          onChange={set('milligramsPerKgDay')}
        />
        <Select
          label={words.route}
          where="details.route"
          value={draft.route}
          onChange={(route) => set('route')(route as Details['route'])}
          choices={ROUTES}
        />
        <Field
          label={words.bioavailability}
          where="details.bioavailabilityPercent"
          kind="decimal"
          unit="%"
          value={draft.bioavailabilityPercent}
          onChange={set('bioavailabilityPercent')}
          hint={words.byDefault}
          isOptional
        />
        <Field
          label={words.absorption}
          where="details.absorptionPercent"
          kind="decimal"
          unit="%"
          value={draft.absorptionPercent}
          onChange={set('absorptionPercent')}
          hint={words.byDefault}
          isOptional
        />
        <Field
          label={words.source}
          where="details.source"
          value={draft.source}
          onChange={set('source')}
          hint={words.sourceHint}
        />
        <FormActions>
          <Button type="submit" isAct isBusy={save.isBusy}>
            {words.save}
          </Button>
          {point && (
            <Button isStop isBusy={save.isBusy} onPress={() => void submit(true)}>
              {words.takeOut}
            </Button>
          )}
        </FormActions>
      </Form>
    </Dialog>
  );
}
