import { workshopWords } from '../../../words/index.ts';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import type { WorkshopDetails } from './workshop.ts';

type Address = WorkshopDetails['responsibleGb'];

interface Props {
  readonly title: string;
  readonly where: string;
  readonly value: Address;
  readonly onChange: (address: Address) => void;
}

const { details: words } = workshopWords;

export const AddressFields = ({ title, where, value, onChange }: Props) => (
  <FieldGroup title={title}>
    <Field
      label={words.personName}
      where={`${where}.name`}
      value={value.name}
      onChange={(name) => onChange({ ...value, name })}
      isOptional
    />
    <Field
      label={words.address}
      where={`${where}.address`}
      kind="long"
      value={value.address}
      onChange={(address) => onChange({ ...value, address })}
      isOptional
    />
  </FieldGroup>
);
