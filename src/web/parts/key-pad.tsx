import { Delete } from 'lucide-react';
import { Button } from 'react-aria-components';
import { partWords } from '../../words/index.ts';
import { type Key, pressKey } from '../show/press-key.ts';
import styles from './key-pad.module.css';

interface Props {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Pieces have no point. */
  readonly isWhole?: boolean;
  /** What was typed is on its way: it stays as it was sent until the answer is there. */
  readonly isBusy?: boolean;
}

const KEYS: readonly Key[] = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', 'rub-out'];
const labels: Partial<Record<Key, string>> = { '.': partWords.point, 'rub-out': partWords.rubOut };

/** Big keys for a greasy knuckle; a keyboard or a scale that types works in the field all the same. */
export const KeyPad = ({ value, onChange, isWhole = false, isBusy = false }: Props) => (
  <fieldset aria-label={partWords.keys} className={styles.keys}>
    {KEYS.map((key) => (
      <Button
        key={key}
        className={styles.key}
        isDisabled={isWhole && key === '.'}
        onPress={() => !isBusy && onChange(pressKey(value, key))}
        {...(labels[key] === undefined ? {} : { 'aria-label': labels[key] })}
      >
        {key === 'rub-out' ? <Delete size={32} aria-hidden /> : key}
      </Button>
    ))}
  </fieldset>
);
