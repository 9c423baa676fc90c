import { productWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useSettled } from '../../api/use-settled.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { CheckBox } from '../../parts/check-box.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { LabelLacks } from '../labels/label-lacks.tsx';
import { ContentFields } from './content-fields.tsx';
import { describeProduct } from './describe-product.ts';
import { LabelFields } from './label-fields.tsx';
import { PackFields } from './pack-fields.tsx';
import type { Product } from './product.ts';
import { draftOfProduct, type ProductDraft, readProductDraft } from './product-draft.ts';
import type { ProductParts } from './use-parts.ts';

interface Props {
  readonly first: ProductDraft;
  /** Left out: a new one. */
  readonly product?: Product;
  readonly parts: ProductParts;
}

const { form: words } = productWords;

export function ProductEditor({ first, product, parts }: Props) {
  const editing = useEditing(product ?? { version: 0, details: undefined }, ({ details }) =>
    details ? draftOfProduct(details) : first,
  );
  const save = useWrite('saveProduct');
  const letGo = useUnsaved(editing.isChanged, save);
  const goTo = useGoTo();
  const typed = readProductDraft(useSettled(editing.draft));
  const asked = typed.ok ? { details: typed.value, productId: product?.id ?? null } : undefined;
  const submit = async () => {
    const read = readProductDraft(editing.draft);
    if (!read.ok) return save.refuse(read.problems);
    const which = product ? { id: product.id, version: editing.version } : {};
    if (!(await save.write({ body: { ...which, details: read.value } }))) return;
    letGo();
    tell(words.saved(read.value.name));
    goTo('/products');
  };
  return (
    <Card>
      <Conflict
        problems={save.problems}
        editing={editing}
        describe={describeProduct(parts)}
        onChosen={save.forget}
      />
      <Form label={words.label} problems={save.problems} onSubmit={() => void submit()}>
        <ContentFields editing={editing} parts={parts} />
        <PackFields editing={editing} parts={parts} />
        <LabelFields editing={editing} />
        <LabelLacks isOnProduct asked={asked} />
        {product && (
          <CheckBox isChecked={editing.draft.isWithdrawn} onChange={editing.set('isWithdrawn')}>
            {words.withdrawn}
          </CheckBox>
        )}
        <FormActions>
          <Button type="submit" isAct isBusy={save.isBusy}>
            {words.save}
          </Button>
        </FormActions>
      </Form>
    </Card>
  );
}
