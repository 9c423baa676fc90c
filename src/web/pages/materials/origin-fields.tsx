import { materialWords, termWords } from '../../../words/index.ts';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import type { MaterialDetails } from './material.ts';

type Origins = MaterialDetails['origins'];
type Flag = NonNullable<Origins>[number];

interface Props {
  readonly value: Origins;
  readonly onChange: (origins: Origins) => void;
}

const { form: words } = materialWords;
const FLAGS = Object.entries(termWords.origin).map(([id, name]) => ({ id, name }));

/** Nothing said is another thing than none of them: "has it got nuts in?" needs the difference. */
export const OriginFields = ({ value, onChange }: Props) => (
  <>
    <RadioChoice
      title={words.originTitle}
      choices={[
        { id: 'unknown', name: words.originUnknown },
        { id: 'known', name: words.originKnown },
      ]}
      value={value === null ? 'unknown' : 'known'}
      onChange={(id) => onChange(id === 'unknown' ? null : (value ?? []))}
    />
    {value !== null && (
      <CheckBoxes
        title={words.originWhich}
        choices={FLAGS}
        chosen={value}
        onChange={(chosen) => onChange(chosen as Flag[])}
      />
    )}
  </>
);
