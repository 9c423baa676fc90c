import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { scaleWords } from '../../../words/index.ts';
import { call } from '../../api/call.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';

type Plan = AnswerOf<'planBatch'>;
const { blend: words } = scaleWords;

interface Props {
  readonly plan: Plan;
  readonly lines: NonNullable<Plan['weighing']['small'][number]['blend']>;
}

/** Writes the blend down as a base of its own, in the proportions of this formula; a person looks at it then. */
export function BlendAhead({ plan, lines }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <div>
      <Button onPress={() => setOpen(true)}>{words.write}</Button>
      {isOpen && <BlendDialog plan={plan} lines={lines} onClose={() => setOpen(false)} />}
    </div>
  );
}

function BlendDialog({ plan, lines, onClose }: Props & { readonly onClose: () => void }) {
  const [name, setName] = useState(words.nameFor(plan.formulaName));
  const [code, setCode] = useState('');
  /** The formula that was begun already, where only its recipe was refused. */
  const [begun, setBegun] = useState<string | null>(null);
  const formula = useWrite('saveFormula');
  const revision = useWrite('saveRevision');
  const navigate = useNavigate();
  async function submit() {
    const id =
      begun ?? (await formula.write({ body: { name, code: code.trim().toUpperCase(), kind: 'base' } }))?.id;
    if (id === undefined) return;
    setBegun(id);
    const { details } = await call('getRevision', { params: { id: plan.revisionId } });
    const written = await revision.write({
      params: { id },
      body: {
        version: null,
        details: {
          ...details,
          standing: 'trial',
          settingHours: null,
          note: words.note(plan.formulaName),
          steps: [],
          lines: lines.map((line) => ({ ...line, stage: words.stage })),
        },
      },
    });
    if (!written) return;
    onClose();
    await navigate({ to: '/formulas/$id', params: { id } });
  }
  return (
    <Dialog title={words.write} isOpen onClose={onClose}>
      <Form
        label={words.write}
        problems={begun === null ? formula.problems : revision.problems}
        onSubmit={() => void submit()}
      >
        <p>{words.about}</p>
        <Field label={words.name} where="name" value={name} onChange={setName} />
        <Field label={words.code} where="code" value={code} onChange={setCode} hint={words.codeHint} />
        <Button type="submit" isAct isBusy={formula.isBusy || revision.isBusy}>
          {words.write}
        </Button>
      </Form>
    </Dialog>
  );
}
