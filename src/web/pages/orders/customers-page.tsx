import { useState } from 'react';
import { orderWords, partWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import { type Customer, CustomerDialog } from './customer-dialog.tsx';
import { EraseCustomer } from './erase-customer.tsx';
import { OrderNav } from './order-nav.tsx';

const { customer: words } = orderWords;

export const CustomersPage = () => (
  <Loaded read={useRead('listCustomers')} title={words.title}>
    {(customers) => <CustomersView customers={customers} />}
  </Loaded>
);

type Asked = 'add' | { readonly change: string } | { readonly erase: string } | null;

function CustomersView({ customers }: { readonly customers: readonly Customer[] }) {
  const [asked, setAsked] = useState<Asked>(null);
  const close = () => setAsked(null);
  const find = (id: string) => customers.find((customer) => customer.id === id);
  const changing = asked && typeof asked === 'object' && 'change' in asked ? find(asked.change) : undefined;
  const erasing = asked && typeof asked === 'object' && 'erase' in asked ? find(asked.erase) : undefined;
  return (
    <Page
      title={words.title}
      says={words.says(customers.filter(({ isErased }) => !isErased).length)}
      soft={words.soft}
      actions={
        <Button isAct onPress={() => setAsked('add')}>
          {words.add}
        </Button>
      }
      isNarrow
    >
      <OrderNav />
      <Card title={words.list} isFlush>
        <List rows={customers} keyOf={({ id }) => id} empty={words.none}>
          {(customer) => (
            <CustomerLine
              customer={customer}
              onChange={() => setAsked({ change: customer.id })}
              onErase={() => setAsked({ erase: customer.id })}
            />
          )}
        </List>
      </Card>
      {asked === 'add' && <CustomerDialog onClose={close} onSaved={close} />}
      {changing && <CustomerDialog customer={changing} onClose={close} onSaved={close} />}
      {erasing && <EraseCustomer customer={erasing} onClose={close} />}
    </Page>
  );
}

interface LineProps {
  readonly customer: Customer;
  readonly onChange: () => void;
  readonly onErase: () => void;
}

function CustomerLine({ customer, onChange, onErase }: LineProps) {
  if (customer.isErased) return <State kind="plain">{words.erasedState}</State>;
  return (
    <>
      <ListRow>
        <strong>{customer.name}</strong>
      </ListRow>
      <ListFoot>
        <span className="soft">{customer.address.split('\n').join(', ')}</span>
        <span>
          <Button isPlain onPress={onChange} label={`${partWords.change}: ${customer.name}`}>
            {partWords.change}
          </Button>
          <Button isPlain onPress={onErase} label={words.eraseTitle(customer.name)}>
            {words.erase}
          </Button>
        </span>
      </ListFoot>
    </>
  );
}
