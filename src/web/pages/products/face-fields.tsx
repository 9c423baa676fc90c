import { productWords, termWords } from '../../../words/index.ts';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { FaceDraft } from './product-draft.ts';

interface Props {
  readonly title: string;
  readonly where: string;
  readonly value: FaceDraft;
  readonly onChange: (face: FaceDraft) => void;
}

const { form: words } = productWords;
const SHAPES = Object.entries(termWords.shape).map(([id, name]) => ({ id, name }));

export const FaceFields = ({ title, where, value, onChange }: Props) => (
  <FieldGroup title={`${words.faceTitle}: ${title}`}>
    <SideBySide>
      <Select
        label={words.shape}
        where={`${where}.shape`}
        value={value.shape}
        onChange={(shape) => onChange({ ...value, shape: shape as FaceDraft['shape'] })}
        choices={SHAPES}
      />
      <Field
        label={words.width}
        where={`${where}.width`}
        kind="decimal"
        unit="mm"
        value={value.width}
        onChange={(width) => onChange({ ...value, width })}
      />
      {value.shape === 'rectangle' && (
        <Field
          label={words.height}
          where={`${where}.height`}
          kind="decimal"
          unit="mm"
          value={value.height}
          onChange={(height) => onChange({ ...value, height })}
        />
      )}
    </SideBySide>
  </FieldGroup>
);
