import { orderWords } from '../../../words/index.ts';
import { SideLinks } from '../../parts/side-links.tsx';

export const OrderNav = () => (
  <SideLinks
    label={orderWords.title}
    links={[
      { to: '/orders', name: orderWords.title },
      { to: '/orders/customers', name: orderWords.customers },
      { to: '/products', name: orderWords.products },
    ]}
  />
);
