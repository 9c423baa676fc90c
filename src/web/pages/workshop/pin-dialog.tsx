import { useState } from 'react';
import { reachWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { PinField } from '../../reach/pin-field.tsx';
import { isOwnComputer } from '../../reach/use-door.ts';

interface Props {
  readonly person: { readonly id: string; readonly name: string };
  readonly hasPin: boolean;
  readonly onClose: () => void;
}

const { pin: words } = reachWords;

/** Typed twice, since nobody sees it: at the workshop's computer for anybody, on a device for oneself by the old one. */
export function PinDialog({ person, hasPin, onClose }: Props) {
  const [typed, setTyped] = useState({ old: '', pin: '', again: '' });
  const set = useWrite('setPin');
  const change = useWrite('changeOwnPin');
  const { problems, isBusy } = isOwnComputer ? set : change;
  const isSame = typed.pin === typed.again;
  const close = (said: string) => {
    tell(said);
    onClose();
  };
  const submit = async () => {
    const { pin, old } = typed;
    const params = { id: person.id };
    const answer = isOwnComputer
      ? await set.write({ params, body: { pin } })
      : await change.write({ body: { oldPin: old, pin } });
    if (answer) close(isOwnComputer ? words.saved(person.name) : words.changed);
  };
  const takeAway = async () => {
    if (await set.write({ params: { id: person.id }, body: { pin: null } }))
      close(words.takenAway(person.name));
  };
  const field = (key: keyof typeof typed) => ({
    value: typed[key],
    onChange: (value: string) => setTyped({ ...typed, [key]: value }),
  });
  return (
    <Dialog title={words.titleOf(person.name)} isOpen onClose={onClose} isHeld={typed.pin !== ''}>
      <p className="soft">{words.about}</p>
      <Form label={words.titleOf(person.name)} problems={problems} onSubmit={() => void submit()}>
        {!isOwnComputer && <PinField label={words.old} where="oldPin" {...field('old')} isFirst />}
        <PinField
          label={isOwnComputer ? words.field : words.new}
          where="pin"
          {...field('pin')}
          isFirst={isOwnComputer}
        />
        <PinField label={words.again} where="again" {...field('again')} />
        {!isSame && typed.again.length >= typed.pin.length && <p role="alert">{words.differ}</p>}
        <FormActions>
          <Button type="submit" isAct isBusy={isBusy} isDisabled={!isSame || typed.pin === ''}>
            {words.save}
          </Button>
          {isOwnComputer && hasPin && (
            <Button isStop onPress={() => void takeAway()} isBusy={isBusy}>
              {words.takeAway}
            </Button>
          )}
        </FormActions>
      </Form>
    </Dialog>
  );
}
