import { askAboutCup, cupQuestionCodes } from '../../../core/making/index.ts';
import type { Problem } from '../../../core/problem.ts';
import { sayProblem, stepWords } from '../../../words/index.ts';
import type { JudgeHere } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import type { Batch, Step } from './batch.ts';
import { cupSoFar } from './step-weighing.ts';
import { bowlBefore } from './use-step-entry.ts';

interface Props {
  readonly asked: readonly Problem[];
  readonly onSure: () => void;
  readonly onClose: () => void;
}

/** A cup that looks like a slip: asked, never put right by itself. */
export function CupQuestion({ asked, onSure, onClose }: Props) {
  const said = asked.map((each) => ({ key: `${each.code} ${each.where}`, ...sayProblem(each) }));
  return (
    <Dialog isBench title={stepWords.cup.askTitle} isOpen={asked.length > 0} onClose={onClose}>
      {said.map(({ key, says, mend }) => (
        <div key={key}>
          <p>
            <strong>{says}</strong>
          </p>
          <p>{mend}</p>
        </div>
      ))}
      <div>
        <Button isBench onPress={onSure}>
          {stepWords.cup.sure}
        </Button>
      </div>
    </Dialog>
  );
}

const QUESTIONS: readonly string[] = cupQuestionCodes;
export const isCupQuestion = ({ code }: Problem): boolean => QUESTIONS.includes(code);

/** What the workshop asks about the cups of a round, asked on the tablet while the workshop is away. */
export const judgeRoundHere =
  (batch: Batch, screen: Step): JudgeHere<'recordRound'> =>
  ({ body: { cups = [], sure = [] } }) =>
    cups
      .flatMap((cup, index) =>
        cupSoFar(cup) ? askAboutCup(cup, bowlBefore(batch, screen), `cups[${index}]`) : [],
      )
      .filter(({ code }) => !sure.includes(code));
