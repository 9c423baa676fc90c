import { useState } from 'react';
import { shelfWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';

interface Props {
  readonly lotId: string;
  readonly onClose: () => void;
}

const { lot: words } = shelfWords;

/** Whether a base is firm, and how somebody knows. */
export function SayFirm({ lotId, onClose }: Props) {
  const [remark, setRemark] = useState('');
  const say = useWrite('sayFirm');
  const submit = async () => {
    if (!(await say.write({ params: { id: lotId }, body: { remark } }))) return;
    tell(words.firmNow);
    onClose();
  };
  return (
    <Dialog title={words.firmTitle} isOpen onClose={onClose}>
      <p>{words.firmSays}</p>
      <Form label={words.firmTitle} problems={say.problems} onSubmit={() => void submit()}>
        <Field label={words.firmRemark} where="remark" value={remark} onChange={setRemark} isOptional />
        <Button type="submit" isAct isBench isBusy={say.isBusy}>
          {words.sayFirm}
        </Button>
      </Form>
    </Dialog>
  );
}
