import { makingWords } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { AskReason } from './ask-reason.tsx';
import type { Batch } from './batch.ts';

export function AbandonBatch({ batch }: { readonly batch: Batch }) {
  const abandon = useWrite('abandonBatch');
  return (
    <AskReason
      isBench
      word={makingWords.abandon}
      title={makingWords.abandonTitle}
      reasonLabel={makingWords.abandonWhy}
      isBusy={abandon.isBusy}
      problems={abandon.problems}
      onReason={async (reason) =>
        (await abandon.write({ params: { id: batch.id }, body: { reason } })) !== undefined
      }
    />
  );
}
