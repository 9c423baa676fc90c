import { useState } from 'react';
import { lightWords, wayWords } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Form } from '../../parts/form.tsx';
import type { Run } from './run.ts';
import { TARE_QUESTIONS, type WayDraft, WayFields } from './way-fields.tsx';
import { wayOf } from './way-of.ts';

/** Weighing in another way from now on; each tin so far keeps how it was weighed. */
export function ChangeWay({ run }: { readonly run: Run }) {
  const [isOpen, setOpen] = useState(false);
  const [draft, setDraft] = useState<WayDraft>({ way: run.way, tare: '', tares: run.tares });
  const change = useBenchWrite('changeFillWay');
  const isAsked = change.problems.some(({ code }) => TARE_QUESTIONS.includes(code));
  async function submit() {
    const body = { ...wayOf(draft), aimGrams: null, sure: isAsked ? [...TARE_QUESTIONS] : [] };
    if (await change.write({ params: { id: run.id }, body })) setOpen(false);
  }
  return (
    <>
      <Button isBench onPress={() => setOpen(true)}>
        {wayWords.change}
      </Button>
      <Dialog isBench title={wayWords.changeTitle} isOpen={isOpen} onClose={() => setOpen(false)} isWide>
        <p className="soft">{wayWords.changeSays}</p>
        <Form label={wayWords.changeTitle} problems={change.problems} onSubmit={() => void submit()}>
          <WayFields
            draft={draft}
            onChange={(next) => {
              change.forget();
              setDraft(next);
            }}
            knownTare={run.tinGrams}
            tolerableErrorGrams={run.tolerableErrorGrams}
          />
          <Button type="submit" isAct isBench isBusy={change.isBusy}>
            {isAsked ? lightWords.sure : wayWords.take}
          </Button>
        </Form>
      </Dialog>
    </>
  );
}
