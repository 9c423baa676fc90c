import { shelfWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Page } from '../../shell/page.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { useOptionalParam } from '../../shell/use-optional-param.ts';
import { LotFactsFields } from './lot-facts-fields.tsx';
import { MaterialChoice, useChosenMaterial } from './material-choice.tsx';
import { emptyGoods, readReceiveDraft } from './receive-draft.ts';

const { goods: words } = shelfWords;

/** New goods: accepted in one tap, or put on hold. */
export function ReceivePage() {
  const { draft, set, isChanged } = useDraft(emptyGoods(useOptionalParam('materialId')));
  const { materials, material, unit } = useChosenMaterial(draft.materialId);
  const receive = useWrite('receiveGoods');
  const letGo = useUnsaved(isChanged, receive);
  const goTo = useGoTo();
  const submit = async (accept: boolean) => {
    const read = readReceiveDraft(draft, accept);
    if (!read.ok) return receive.refuse(read.problems);
    const saved = await receive.write({ body: read.value });
    if (!saved) return;
    letGo();
    tell(accept ? words.accepted : words.held);
    goTo(`/shelf/lots/${saved.id}`);
  };
  return (
    <Page
      title={words.title}
      above={words.title}
      says={material ? words.saysChosen(material.details.name) : words.says}
      soft={words.soft}
      isNarrow
    >
      <Card>
        <Form label={words.form} problems={receive.problems} onSubmit={() => void submit(true)}>
          <MaterialChoice value={draft.materialId} onChange={set('materialId')} materials={materials} />
          <Field
            label={words.quantity}
            where="quantity"
            kind={unit === 'g' ? 'decimal' : 'whole'}
            least={1}
            unit={unit === 'g' ? 'g' : words.pieces}
            isBench
            value={draft.quantity}
            onChange={set('quantity')}
          />
          <LotFactsFields draft={draft} set={set} />
          <Field
            label={words.supplier}
            where="supplier"
            value={draft.supplier}
            onChange={set('supplier')}
            isOptional
          />
          <Field
            label={words.reason}
            where="reason"
            value={draft.reason}
            onChange={set('reason')}
            hint={words.reasonHint}
            isOptional
          />
          <FormActions>
            <Button type="submit" isAct isBench isBusy={receive.isBusy}>
              {words.accept}
            </Button>
            <Button isBench isBusy={receive.isBusy} onPress={() => void submit(false)}>
              {words.hold}
            </Button>
          </FormActions>
        </Form>
      </Card>
    </Page>
  );
}
