import { useState } from 'react';
import { makingWords, partWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';

export interface DeviationSaid {
  readonly what: string;
  readonly why: string;
}

interface Props {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly onSaid: (said: DeviationSaid) => void;
}

/** What was done differently, and why: asked once, kept for ever. */
export function DeviationDialog({ title, isOpen, onClose, onSaid }: Props) {
  const [what, setWhat] = useState('');
  const [why, setWhy] = useState('');
  return (
    <Dialog title={title} isOpen={isOpen} onClose={onClose}>
      <Form
        label={title}
        problems={[]}
        onSubmit={() => what.trim() !== '' && why.trim() !== '' && onSaid({ what, why })}
      >
        <Field label={makingWords.whatHappened} where="what" value={what} onChange={setWhat} isFirst />
        <Field label={makingWords.why} where="why" value={why} onChange={setWhy} />
        <Button type="submit" isAct isBench isDisabled={what.trim() === '' || why.trim() === ''}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}
