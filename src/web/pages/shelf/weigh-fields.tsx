import { useState } from 'react';
import { shelfWords } from '../../../words/index.ts';
import { Field } from '../../parts/field.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { WeighDraft } from './weigh-draft.ts';

interface Props {
  readonly unit: 'g' | 'pieces';
  readonly draft: WeighDraft;
  readonly onChange: (draft: WeighDraft) => void;
}

const { count: words } = shelfWords;

/** Two displays, the tub full and the tub alone, and keys that write into the one touched last. */
export function WeighFields({ unit, draft, onChange }: Props) {
  const [active, setActive] = useState<'gross' | 'tare'>('gross');
  const field: keyof WeighDraft = unit === 'pieces' ? 'pieces' : active;
  const set = (key: keyof WeighDraft) => (value: string) => onChange({ ...draft, [key]: value });
  return (
    <>
      {unit === 'pieces' ? (
        <Field
          label={words.pieces}
          where="pieces"
          kind="whole"
          isBench
          value={draft.pieces}
          onChange={set('pieces')}
        />
      ) : (
        <SideBySide>
          <Field
            label={words.gross}
            where="grossGrams"
            kind="decimal"
            unit="g"
            isBench
            value={draft.gross}
            onChange={set('gross')}
            onTouch={() => setActive('gross')}
          />
          <Field
            label={words.tare}
            where="tareGrams"
            kind="decimal"
            unit="g"
            isBench
            value={draft.tare}
            hint={words.tareHint}
            onChange={set('tare')}
            onTouch={() => setActive('tare')}
          />
        </SideBySide>
      )}
      <KeyPad value={draft[field]} onChange={set(field)} isWhole={unit === 'pieces'} />
    </>
  );
}
