import type { Problem } from '../../../core/problem.ts';
import { makingWords, partWords, type SpokenProblem } from '../../../words/index.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import styles from './bench.module.css';

export interface DeviationSaid {
  readonly what: string;
  readonly why: string;
}

interface Props {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly onSaid: (said: DeviationSaid) => void;
  /** What the workshop asks back about. */
  readonly caution?: SpokenProblem | undefined;
  readonly saveWord?: string;
  /** It stands in the way of a sale. */
  readonly isStop?: boolean;
  /** Why it was not taken: said beside the field, which keeps its text. */
  readonly problems?: readonly Problem[];
  readonly isBusy?: boolean;
}

const NONE: readonly Problem[] = [];
const NOTHING: DeviationSaid = { what: '', why: '' };

/** What was done differently, and why: asked once, kept for ever. What is typed outlives a closed question. */
export function DeviationDialog({
  title,
  isOpen,
  onClose,
  onSaid,
  caution,
  saveWord = partWords.save,
  isStop = false,
  problems = NONE,
  isBusy = false,
}: Props) {
  const { draft, set, isChanged } = useDraft(NOTHING);
  useUnsaved(isChanged);
  const isComplete = draft.what.trim() !== '' && draft.why.trim() !== '';
  return (
    <Dialog isBench title={title} isOpen={isOpen} onClose={onClose}>
      {caution && (
        <div className={isStop ? styles.wrong : styles.caution}>
          <p>
            <strong>{caution.says}</strong>
          </p>
          <p>{caution.mend}</p>
        </div>
      )}
      <Form label={title} problems={problems} onSubmit={() => isComplete && onSaid(draft)}>
        <Field
          label={makingWords.whatHappened}
          where="what"
          value={draft.what}
          onChange={set('what')}
          kind="long"
          isFirst
        />
        <Field label={makingWords.why} where="why" value={draft.why} onChange={set('why')} kind="long" />
        <Button
          type="submit"
          isAct={!isStop}
          isStop={isStop}
          isBench
          isBusy={isBusy}
          isDisabled={!isComplete}
        >
          {saveWord}
        </Button>
      </Form>
    </Dialog>
  );
}
