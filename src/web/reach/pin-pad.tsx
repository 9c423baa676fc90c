import { Delete } from 'lucide-react';
import { Button } from 'react-aria-components';
import { partWords } from '../../words/index.ts';
import pad from '../parts/key-pad.module.css';
import { MOST_DIGITS } from './pin-field.tsx';

interface Props {
  readonly value: string;
  readonly onChange: (pin: string) => void;
}

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

/** Big keys for a greasy knuckle. A PIN may begin with nought, which a weight may not. */
export function PinPad({ value, onChange }: Props) {
  const press = (digit: string) => value.length < MOST_DIGITS && onChange(value + digit);
  const key = (digit: string) => (
    <Button key={digit} className={pad.key ?? ''} onPress={() => press(digit)}>
      {digit}
    </Button>
  );
  return (
    <fieldset aria-label={partWords.keys} className={pad.keys}>
      {DIGITS.map(key)}
      <span aria-hidden="true" />
      {key('0')}
      <Button
        className={pad.key ?? ''}
        aria-label={partWords.rubOut}
        onPress={() => onChange(value.slice(0, -1))}
      >
        <Delete size={32} aria-hidden />
      </Button>
    </fieldset>
  );
}
