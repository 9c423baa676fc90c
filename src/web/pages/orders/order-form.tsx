import type { Problem } from '../../../core/problem.ts';
import { orderWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { CustomerChoice } from './customer-choice.tsx';
import { emptyOrderLine } from './empty-order-line.ts';
import type { OrderDraft } from './order-draft.ts';
import { OrderLineFields } from './order-line-fields.tsx';

interface Props {
  readonly draft: OrderDraft;
  readonly change: (change: (draft: OrderDraft) => OrderDraft) => void;
  readonly problems: readonly Problem[];
  readonly isBusy: boolean;
  readonly saveWord: string;
  readonly onSubmit: () => void;
}

const { form: words } = orderWords;

export function OrderForm({ draft, change, problems, isBusy, saveWord, onSubmit }: Props) {
  const set =
    <Key extends keyof OrderDraft>(key: Key) =>
    (value: OrderDraft[Key]) =>
      change((now) => ({ ...now, [key]: value }));
  return (
    <Form label={words.label} problems={problems} onSubmit={onSubmit}>
      <FieldGroup title={words.lines}>
        {draft.lines.map((line, index) => (
          <OrderLineFields
            key={line.key}
            line={line}
            index={index}
            onChange={(next) => set('lines')(draft.lines.map((one) => (one.key === line.key ? next : one)))}
            onRemove={
              draft.lines.length > 1
                ? () => set('lines')(draft.lines.filter(({ key }) => key !== line.key))
                : undefined
            }
          />
        ))}
        <div>
          <Button onPress={() => set('lines')([...draft.lines, emptyOrderLine()])}>{words.addLine}</Button>
        </div>
      </FieldGroup>
      <SideBySide>
        <DateField
          label={words.wantedBy}
          where="wantedBy"
          value={draft.wantedBy}
          onChange={set('wantedBy')}
        />
        <DateField
          label={words.placedOn}
          where="placedOn"
          value={draft.placedOn}
          onChange={set('placedOn')}
        />
      </SideBySide>
      <CustomerChoice value={draft.customerId} onChange={set('customerId')} />
      <Field
        label={words.note}
        where="note"
        kind="long"
        value={draft.note}
        onChange={set('note')}
        isOptional
      />
      <FormActions>
        <Button type="submit" isAct isBusy={isBusy}>
          {saveWord}
        </Button>
      </FormActions>
    </Form>
  );
}
