import { useState } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';

interface Props {
  /** Words of the button that opens the question, and what a screen reader adds to them. */
  readonly word: string;
  readonly label?: string;
  readonly title: string;
  readonly reasonLabel: string;
  readonly isBusy: boolean;
  readonly problems: readonly Problem[];
  /** True: it is kept, and the question closes. */
  readonly onReason: (reason: string) => Promise<boolean>;
  readonly isBench?: boolean;
}

/** A button that asks for a reason before it does what it says. */
export function AskReason({
  word,
  label,
  title,
  reasonLabel,
  isBusy,
  problems,
  onReason,
  isBench = false,
}: Props) {
  const [isOpen, setOpen] = useState(false);
  const [reason, setReason] = useState('');
  useUnsaved(reason !== '');
  async function submit() {
    if (await onReason(reason)) {
      setOpen(false);
      setReason('');
    }
  }
  return (
    <>
      <Button isBench={isBench} label={label} onPress={() => setOpen(true)}>
        {word}
      </Button>
      <Dialog isBench={isBench} title={title} isOpen={isOpen} onClose={() => setOpen(false)}>
        <Form label={title} problems={problems} onSubmit={() => void submit()}>
          <Field label={reasonLabel} where="reason" value={reason} onChange={setReason} isFirst />
          <Button type="submit" isStop isBench isBusy={isBusy} isDisabled={reason.trim() === ''}>
            {word}
          </Button>
        </Form>
      </Dialog>
    </>
  );
}
