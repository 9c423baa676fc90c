import { makingWords } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { AskReason } from './ask-reason.tsx';
import type { Batch } from './batch.ts';

export function StrikeAddition({ batch, entryId }: { readonly batch: Batch; readonly entryId: string }) {
  const strike = useBenchWrite('strikeAddition');
  return (
    <div>
      <AskReason
        isBench
        word={makingWords.strike}
        title={makingWords.strikeTitle}
        reasonLabel={makingWords.strikeWhy}
        isBusy={strike.isBusy}
        problems={strike.problems}
        onReason={async (reason) =>
          (await strike.write({ params: { id: batch.id }, body: { entryId, reason } })) !== undefined
        }
      />
    </div>
  );
}
