import type { Problem } from '../../../core/problem.ts';
import { fillingWords, sayProblem } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';

interface Props {
  readonly problems: readonly Problem[];
  readonly onSure: () => void;
  readonly onClose: () => void;
}

/** The problem that is asked about instead of told. */
export const FAR_ABOVE = 'net-far-above-label';

/** Far more in a tin than it states: asked each time, since it is most often a misread scale or another tin. */
export function FarAboveQuestion({ problems, onSure, onClose }: Props) {
  const asked = problems.find((each) => each.code === FAR_ABOVE);
  const said = asked && sayProblem(asked);
  return (
    <Dialog title={fillingWords.farAboveTitle} isOpen={asked !== undefined} onClose={onClose}>
      <p>{said?.says}</p>
      <p>{said?.mend}</p>
      <div>
        <Button isAct isBench onPress={onSure}>
          {fillingWords.farAboveSure}
        </Button>
      </div>
    </Dialog>
  );
}
