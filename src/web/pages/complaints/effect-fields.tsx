import { complaintWords } from '../../../words/index.ts';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { Select } from '../../parts/select.tsx';
import type { Effect, Mark } from './complaint.ts';

interface Props {
  readonly label: string;
  readonly where: string;
  readonly effect: Effect | '';
  readonly marks: readonly Mark[];
  readonly onChange: (effect: Effect | '', marks: readonly Mark[]) => void;
  /** The words of the empty choice, where nothing need be chosen. */
  readonly none?: string;
}

const EFFECTS = Object.entries(complaintWords.effects).map(([id, name]) => ({ id, name }));
const MARKS = Object.entries(complaintWords.markNames).map(([id, name]) => ({ id, name }));

/** What it counts as; a mark of a serious effect makes it one. */
export const EffectFields = ({ label, where, effect, marks, onChange, none }: Props) => (
  <>
    <Select
      label={label}
      where={where}
      value={effect}
      onChange={(id) => onChange(id as Effect | '', id === 'serious' ? marks : [])}
      choices={EFFECTS}
      {...(none === undefined ? {} : { none })}
    />
    {effect === 'serious' && (
      <>
        <p className="soft">{complaintWords.marksHint}</p>
        <CheckBoxes
          title={complaintWords.marks}
          choices={MARKS}
          chosen={marks}
          onChange={(chosen) => onChange(effect, chosen as Mark[])}
        />
      </>
    )}
  </>
);
