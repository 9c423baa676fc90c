import { X } from 'lucide-react';
import { orderWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import type { OrderLineDraft } from './order-draft.ts';
import styles from './orders.module.css';

interface Props {
  readonly line: OrderLineDraft;
  readonly index: number;
  readonly onChange: (line: OrderLineDraft) => void;
  readonly onRemove: (() => void) | undefined;
}

const { form: words } = orderWords;

export function OrderLineFields({ line, index, onChange, onRemove }: Props) {
  const products = useRead('listProducts').data ?? [];
  const choices = products
    .filter(({ id, details }) => !details.isWithdrawn || id === line.productId)
    .map(({ id, details }) => ({ id, name: details.name }));
  return (
    <div className={styles.line}>
      <Select
        label={words.product(index + 1)}
        where={`lines[${index}].productId`}
        value={line.productId}
        onChange={(productId) => onChange({ ...line, productId })}
        choices={choices}
      />
      <Field
        label={words.units}
        where={`lines[${index}].units`}
        kind="whole"
        least={1}
        value={line.units}
        onChange={(units) => onChange({ ...line, units })}
      />
      {onRemove && (
        <Button onPress={onRemove} label={words.removeLine(index + 1)}>
          <X size={20} aria-hidden />
        </Button>
      )}
    </div>
  );
}
