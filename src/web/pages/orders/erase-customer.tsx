import { orderWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Problems } from '../../parts/problems.tsx';
import type { Customer } from './customer-dialog.tsx';

interface Props {
  readonly customer: Customer;
  readonly onClose: () => void;
}

const { customer: words } = orderWords;

export function EraseCustomer({ customer, onClose }: Props) {
  const erase = useWrite('eraseCustomer');
  const act = async () => {
    if (!(await erase.write({ params: { id: customer.id }, body: {} }))) return;
    tell(words.erased);
    onClose();
  };
  return (
    <Dialog title={words.eraseTitle(customer.name)} isOpen onClose={onClose}>
      <p>{words.eraseSays}</p>
      <Problems problems={erase.problems} />
      <Button isStop onPress={() => void act()} isBusy={erase.isBusy}>
        {words.eraseAct}
      </Button>
    </Dialog>
  );
}
