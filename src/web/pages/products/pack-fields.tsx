import { productWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { ProductDraft } from './product-draft.ts';
import type { ProductParts } from './use-parts.ts';

interface Props {
  readonly editing: Editing<ProductDraft>;
  readonly parts: ProductParts;
}

const { form: words } = productWords;

export const PackFields = ({ editing: { draft, set }, parts }: Props) => (
  <FieldGroup title={words.packTitle}>
    <SideBySide>
      <Select
        label={words.tin}
        where="details.tinId"
        value={draft.tinId}
        onChange={set('tinId')}
        choices={parts.tins}
      />
      <Select
        label={words.lid}
        where="details.lidId"
        value={draft.lidId}
        onChange={set('lidId')}
        choices={parts.lids}
        none={words.noLid}
      />
      <Select
        label={words.label2}
        where="details.labelId"
        value={draft.labelId}
        onChange={set('labelId')}
        choices={parts.labels}
        none={words.noLabel}
      />
    </SideBySide>
  </FieldGroup>
);
