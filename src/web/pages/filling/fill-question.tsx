import type { Problem } from '../../../core/problem.ts';
import { lightWords, sayProblem } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import styles from './run.module.css';

interface Props {
  readonly asked: Problem | undefined;
  /** What the answer says; of a tin, that it is kept. */
  readonly sure?: string;
  /** And what leads back. */
  readonly again?: string;
  readonly onSure: () => void;
  /** Another way on, where the question has one. */
  readonly other?: string;
  readonly onOther?: () => void;
  readonly onClose: () => void;
}

/** A reading that looks like a slip: asked each time, never put right by itself. */
export function FillQuestion({
  asked,
  sure = lightWords.sure,
  again = lightWords.weighAgain,
  onSure,
  other,
  onOther,
  onClose,
}: Props) {
  const said = asked && sayProblem(asked);
  return (
    <Dialog
      title={lightWords.askTitle}
      isOpen={asked !== undefined}
      onClose={onClose}
      closeWord={again}
      isBench
    >
      <p>{said?.says}</p>
      <p>{said?.mend}</p>
      <div className={styles.ways}>
        {onOther && (
          <Button isAct isBench onPress={onOther}>
            {other}
          </Button>
        )}
        <Button isBench onPress={onSure}>
          {sure}
        </Button>
      </div>
    </Dialog>
  );
}
