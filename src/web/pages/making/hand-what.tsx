import { useState } from 'react';
import { sayGrams, handWords as words } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import styles from './mishap.module.css';

/** What is weighed in next: of a lot on the shelf, or something new by its name. */
export interface HandThing {
  readonly name: string;
  readonly lotId: string | null;
}

interface Props {
  readonly onChoose: (thing: HandThing) => void;
}

/** From the shelf in one tap, by a part of its name; what is not there yet by its name. */
export function HandWhat({ onChoose }: Props) {
  const [like, setLike] = useState('');
  const found = useRead('findLots', { query: { like: like.trim() } }, { keepsLast: true }).data ?? [];
  const lots = found.filter(
    (lot) =>
      lot.unit === 'g' && lot.status === 'released' && lot.onHand !== '0' && lot.itemKind !== 'product',
  );
  const name = like.trim();
  const isKnown = lots.some((lot) => lot.itemName.toLowerCase() === name.toLowerCase());
  return (
    <Form label={words.what} problems={[]} onSubmit={() => lots[0] && choose(lots[0], onChoose)}>
      <Field label={words.find} where="name" value={like} onChange={setLike} isBench isFirst />
      <div className={styles.choices}>
        {lots.slice(0, SHOWN).map((lot) => (
          <Button key={lot.id} isBench isWide onPress={() => choose(lot, onChoose)}>
            {words.lot(lot.itemName, lot.number, sayGrams(lot.onHand))}
          </Button>
        ))}
        {name !== '' && !isKnown && (
          <Button isBench isWide onPress={() => onChoose({ name, lotId: null })}>
            <span>
              <strong>{words.newThing(name)}</strong>
              <span className={styles.soft}>{words.newThingSoft}</span>
            </span>
          </Button>
        )}
      </div>
    </Form>
  );
}

/** As many as can be looked over at once; a longer word finds the others. */
const SHOWN = 8;

const choose = (lot: { readonly id: string; readonly itemName: string }, onChoose: Props['onChoose']): void =>
  onChoose({ name: lot.itemName, lotId: lot.id });
