import { problem } from '../../../core/problem.ts';
import { shelfWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { showAmount } from '../../show/show-amount.ts';
import { typedDecimal } from '../../show/typed-decimal.ts';
import { PlaceChoice } from './place-choice.tsx';
import type { LotDetail } from './shelf-item.ts';

interface Props {
  readonly detail: LotDetail;
  readonly onClose: () => void;
}

const { book: words } = shelfWords;
type Kind = keyof typeof words.kinds;
const KINDS = Object.entries(words.kinds).map(([id, name]) => ({ id, name }));

export function BookOut({ detail: { lot, places }, onClose }: Props) {
  const { draft, set } = useDraft({
    kind: 'tester' as Kind,
    quantity: '',
    fromPlaceId: places[0]?.placeId ?? '',
    toPlaceId: '',
    reason: '',
  });
  const book = useWrite('moveLot');
  const isMove = draft.kind === 'moved';
  const submit = async () => {
    if (isMove && draft.toPlaceId === '') return book.refuse([problem('choice-missing', 'toPlaceId')]);
    const { kind, quantity, fromPlaceId, toPlaceId, reason } = draft;
    const body = {
      kind,
      quantity: typedDecimal(quantity),
      ...(fromPlaceId === '' ? {} : { fromPlaceId }),
      ...(isMove ? { toPlaceId } : {}),
      reason,
    };
    const kept = await book.write({ params: { id: lot.id }, body });
    if (!kept) return;
    tell(words.saved(showAmount(kept.onHand, lot.unit)));
    onClose();
  };
  return (
    <Dialog title={words.title(lot.number)} isOpen onClose={onClose}>
      <Form label={words.title(lot.number)} problems={book.problems} onSubmit={() => void submit()}>
        <RadioChoice
          title={words.kind}
          choices={KINDS}
          value={draft.kind}
          onChange={(id) => set('kind')(id as Kind)}
        />
        <Field
          label={words.quantity}
          where="quantity"
          kind={lot.unit === 'g' ? 'decimal' : 'whole'}
          least={1}
          unit={lot.unit === 'g' ? 'g' : undefined}
          value={draft.quantity}
          onChange={set('quantity')}
        />
        {places.length > 1 && (
          <Select
            label={words.fromPlace}
            where="fromPlaceId"
            value={draft.fromPlaceId}
            onChange={set('fromPlaceId')}
            choices={places.map(({ placeId, name }) => ({ id: placeId, name }))}
          />
        )}
        {isMove && (
          <PlaceChoice
            label={words.toPlace}
            where="toPlaceId"
            value={draft.toPlaceId}
            onChange={set('toPlaceId')}
          />
        )}
        <Field label={words.reason} where="reason" value={draft.reason} onChange={set('reason')} isOptional />
        <Button type="submit" isAct isBusy={book.isBusy}>
          {words.save}
        </Button>
      </Form>
    </Dialog>
  );
}
