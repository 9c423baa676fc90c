import { stepWords } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { AskReason } from './ask-reason.tsx';
import type { Batch } from './batch.ts';

interface Props {
  readonly batch: Batch;
  readonly entryId: string;
  readonly word: string;
  readonly title: string;
}

/** A step, a beginning or a round that was entered by mistake: struck with a reason, and readable for ever. */
export function StrikeStep({ batch, entryId, word, title }: Props) {
  const strike = useBenchWrite('strikeAddition');
  return (
    <div>
      <AskReason
        isBench
        word={word}
        title={title}
        reasonLabel={stepWords.strikeWhy}
        isBusy={strike.isBusy}
        problems={strike.problems}
        onReason={async (reason) =>
          (await strike.write({ params: { id: batch.id }, body: { entryId, reason } })) !== undefined
        }
      />
    </div>
  );
}
