import type { Problem } from '../../../core/problem.ts';
import { sayProblem, shelfWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';

interface Props {
  readonly problems: readonly Problem[];
  readonly onSure: () => void;
  readonly onClose: () => void;
}

const { count: words } = shelfWords;

/** The problem that is asked about instead of told. */
export const GAIN = 'count-gains';

/** More than the ledger has: asked once, since it is most often another tub or a wrong tare. */
export function GainQuestion({ problems, onSure, onClose }: Props) {
  const gain = problems.find((each) => each.code === GAIN);
  const said = gain && sayProblem(gain);
  return (
    <Dialog title={words.gainTitle} isOpen={gain !== undefined} onClose={onClose}>
      <p>{said?.says}</p>
      <p>{said?.mend}</p>
      <div>
        <Button isAct isBench onPress={onSure}>
          {words.gainSure}
        </Button>
      </div>
    </Dialog>
  );
}
