import { useState } from 'react';
import { orderWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { ComboBox } from '../../parts/combo-box.tsx';
import { CustomerDialog } from './customer-dialog.tsx';

interface Props {
  readonly value: string | null;
  readonly onChange: (id: string | null) => void;
}

export function CustomerChoice({ value, onChange }: Props) {
  const customers = useRead('listCustomers').data;
  const [isAdding, setAdding] = useState(false);
  const choices = (customers ?? [])
    .filter(({ isErased }) => !isErased)
    .map(({ id, name, address }) => ({ id, name, about: address.split('\n').join(', ') }));
  return (
    <>
      <ComboBox
        // The box learns its choices when it is made: a new customer makes it anew.
        key={choices.length}
        label={orderWords.form.customer}
        where="customerId"
        value={value}
        onChange={onChange}
        choices={choices}
        hint={orderWords.form.customerHint}
      />
      <div>
        <Button onPress={() => setAdding(true)}>{orderWords.form.newCustomer}</Button>
      </div>
      {isAdding && (
        <CustomerDialog
          onClose={() => setAdding(false)}
          onSaved={(id) => {
            onChange(id);
            setAdding(false);
          }}
        />
      )}
    </>
  );
}
