import { useState } from 'react';
import { reachWords } from '../../words/index.ts';
import { Button } from '../parts/button.tsx';
import { Form } from '../parts/form.tsx';
import { PinField } from './pin-field.tsx';
import { PinPad } from './pin-pad.tsx';
import { useUnlock } from './use-unlock.ts';

interface Props {
  readonly person: { readonly id: string; readonly name: string };
  readonly onUnlocked: () => void;
  readonly onBack: () => void;
}

const { unlock: words } = reachWords;

/** The last question before somebody signs on this device. */
export function PinForm({ person, onUnlocked, onBack }: Props) {
  const [pin, setPin] = useState('');
  const { unlock, problems, isBusy } = useUnlock();
  const submit = async () => {
    if (await unlock(person.id, pin)) onUnlocked();
    // What was wrong is typed anew; digits that nobody sees cannot be mended.
    else setPin('');
  };
  return (
    <Form label={words.title(person.name)} problems={problems} onSubmit={() => void submit()}>
      <PinField label={words.field} where="pin" value={pin} onChange={setPin} isFirst hasPad />
      <PinPad value={pin} onChange={setPin} />
      <Button type="submit" isAct isBench isWide isBusy={isBusy} isDisabled={pin.length < 4}>
        {words.go}
      </Button>
      <Button isBench isWide onPress={onBack}>
        {words.back}
      </Button>
    </Form>
  );
}
