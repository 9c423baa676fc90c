import { fillingWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { State } from '../../parts/state.tsx';
import { AsWeighed } from '../making/as-weighed.tsx';
import type { Run } from './run.ts';

/** What is in the bowl decides whether these tins may ever be sold: said while they are filled, not only afterwards. */
export function HeldNotice({ run }: { readonly run: Run }) {
  const isOpen = run.release === null;
  const { data: batch } = useRead('getBatch', { params: { id: run.batchId } }, { isWanted: isOpen });
  if (!isOpen || !batch) return null;
  if (run.purpose === 'trial')
    return (
      <p>
        <State kind="watch">{fillingWords.isTrial}</State>
      </p>
    );
  const isRefused = batch.worstCase?.decided?.verdict === 'refused';
  return (
    <>
      <AsWeighed batch={batch} />
      {!batch.asWeighed && batch.worstCase?.isHeld && batch.worstCase.decided?.verdict !== 'accepted' && (
        <p>
          <State kind={isRefused ? 'stop' : 'watch'}>
            {isRefused ? fillingWords.worstRefused : fillingWords.worstHeld}
          </State>
        </p>
      )}
    </>
  );
}
