import { partWords, shelfWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';
import { textOrNull } from './receive-draft.ts';
import type { Lot } from './shelf-item.ts';

interface Props {
  readonly lot: Lot;
  readonly onClose: () => void;
}

const { lot: words } = shelfWords;

const draftOf = ({ supplierLot, bestBefore, paid, cameIn }: Lot) => ({
  supplierLot: supplierLot ?? '',
  bestBefore: bestBefore ?? '',
  paid: paid ?? '',
  cameIn,
  reason: '',
});
type Draft = ReturnType<typeof draftOf>;

const describe = ({ supplierLot, bestBefore, paid, cameIn }: Draft) =>
  [
    [words.supplierLot, supplierLot],
    [words.bestBefore, bestBefore],
    [words.paid, paid],
    [words.cameIn, cameIn],
  ] as const;

export function CorrectLot({ lot, onClose }: Props) {
  const editing = useEditing(lot, draftOf);
  const { draft, set, version } = editing;
  const save = useWrite('correctLot');
  const submit = async () => {
    const body = {
      version,
      supplierLot: textOrNull(draft.supplierLot),
      bestBefore: textOrNull(draft.bestBefore),
      paid: typedDecimalOrNull(draft.paid),
      ...(draft.cameIn === lot.cameIn ? {} : { quantity: typedDecimal(draft.cameIn) }),
      reason: draft.reason,
    };
    if (!(await save.write({ params: { id: lot.id }, body }))) return;
    tell(words.corrected);
    onClose();
  };
  return (
    <Dialog title={words.correctTitle(lot.number)} isOpen onClose={onClose}>
      <p className="soft">{words.correctHint}</p>
      <Conflict problems={save.problems} editing={editing} describe={describe} onChosen={save.forget} />
      <Form label={words.correctTitle(lot.number)} problems={save.problems} onSubmit={() => void submit()}>
        <Field
          label={words.supplierLot}
          where="supplierLot"
          value={draft.supplierLot}
          onChange={set('supplierLot')}
          isOptional
        />
        <DateField
          label={words.bestBefore}
          where="bestBefore"
          value={draft.bestBefore}
          onChange={set('bestBefore')}
          isOptional
        />
        <Field
          label={words.paid}
          where="paid"
          kind="decimal"
          value={draft.paid}
          onChange={set('paid')}
          isOptional
        />
        {lot.itemKind === 'material' && (
          <Field
            label={words.cameIn}
            where="quantity"
            kind={lot.unit === 'g' ? 'decimal' : 'whole'}
            unit={lot.unit === 'g' ? 'g' : undefined}
            value={draft.cameIn}
            onChange={set('cameIn')}
            hint={words.cameInHint}
          />
        )}
        <Field label={words.reason} where="reason" value={draft.reason} onChange={set('reason')} />
        <Button type="submit" isAct isBusy={save.isBusy}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}
