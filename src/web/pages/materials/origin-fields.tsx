import type { NamedOrigin } from '../../../core/safety/index.ts';
import { materialWords, termWords } from '../../../words/index.ts';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { State } from '../../parts/state.tsx';
import type { MaterialDetails } from './material.ts';

type Origins = MaterialDetails['origins'];
type Flag = NonNullable<Origins>[number];

interface Props {
  readonly value: Origins;
  /** What its names tell of and nobody ticked. */
  readonly named: readonly NamedOrigin[];
  readonly onChange: (origins: Origins) => void;
}

const { form: words } = materialWords;
const FLAGS = Object.entries(termWords.origin).map(([id, name]) => ({ id, name }));

/** Nothing said is another thing than none of them: "has it got nuts in?" needs the difference. */
export const OriginFields = ({ value, named, onChange }: Props) => (
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
    {named.map(({ flag, inName }) => (
      <p key={flag} role="status">
        <State kind="watch">{words.originNamed(termWords.origin[flag], inName)}</State>
      </p>
    ))}
  </>
);
