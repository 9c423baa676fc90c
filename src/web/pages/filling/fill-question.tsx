import type { Problem } from '../../../core/problem.ts';
import { lightWords, sayProblem } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';

interface Props {
  readonly asked: Problem | undefined;
  /** What the answer says; of a tin, that it is kept. */
  readonly sure?: string;
  readonly onSure: () => void;
  readonly onClose: () => void;
}

/** A reading that looks like a slip: asked each time, never put right by itself. */
export function FillQuestion({ asked, sure = lightWords.sure, onSure, onClose }: Props) {
  const said = asked && sayProblem(asked);
  return (
    <Dialog isBench title={lightWords.askTitle} isOpen={asked !== undefined} onClose={onClose}>
      <p>{said?.says}</p>
      <p>{said?.mend}</p>
      <div>
        <Button isAct isBench onPress={onSure}>
          {sure}
        </Button>
      </div>
    </Dialog>
  );
}
