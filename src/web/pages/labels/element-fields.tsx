import { ELEMENTS_OF_ROLE, LABEL_ELEMENTS } from '../../../print/layout/index.ts';
import { labelWords } from '../../../words/index.ts';
import { CheckBox } from '../../parts/check-box.tsx';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import type { PieceDraft } from './design-draft.ts';

interface Props {
  readonly piece: PieceDraft;
  readonly onChange: (elements: PieceDraft['elements']) => void;
}

const { design: words } = labelWords;
const ELEMENTS = LABEL_ELEMENTS.map((id) => ({ id, name: words.elementNames[id] }));

/** What stands on a label: as its role has it, or chosen one by one; in the order in which it is set. */
export function ElementFields({ piece: { role, elements }, onChange }: Props) {
  return (
    <>
      <CheckBox
        isChecked={elements !== null}
        onChange={(isChosen) => onChange(isChosen ? [...ELEMENTS_OF_ROLE[role]] : null)}
      >
        {words.chooseElements}
      </CheckBox>
      {elements !== null && (
        <CheckBoxes
          title={words.elements}
          choices={ELEMENTS}
          chosen={elements}
          onChange={(chosen) => {
            const next = LABEL_ELEMENTS.filter((element) => chosen.includes(element));
            // A label with nothing on it is none: it is taken away by its own button.
            if (next.length > 0) onChange(next);
          }}
        />
      )}
    </>
  );
}
