import { useState } from 'react';
import { makingWords, weighInWords as words } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { type BenchWrite, useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import type { Addition, Batch } from './batch.ts';
import { DeviationDialog, type DeviationSaid } from './deviation-dialog.tsx';
import { ResizeOffer } from './resize-offer.tsx';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly resize: BenchWrite<'resizeBatch'>;
  readonly onClose: () => void;
  readonly onDone: () => void;
}

/** Parts of it are in, and there is no more: the rest is made smaller, or it stays so, said why. */
export function AllThereIs({ batch, screen, resize, onClose, onDone }: Props) {
  const [isSaying, setSaying] = useState(false);
  const close = useBenchWrite('closeAddition');
  const params = { id: batch.id };

  async function leave(deviation: DeviationSaid): Promise<boolean> {
    setSaying(false);
    return (await close.write({ params, body: { position: screen.position, deviation } })) !== undefined;
  }
  async function take(offer: AnswerOf<'offerResize'>): Promise<void> {
    const what = words.autoOver(screen.inGrams, screen.targetGrams);
    // It may be closed already, and only the rest be still to be made smaller.
    if (!screen.done && !(await leave({ what, why: words.autoUnderWhy }))) return;
    const body = { position: screen.position, upon: offer.upon };
    if (await resize.write({ params, body })) onClose();
  }
  return (
    <>
      {screen.done && resize.problems.length > 0 && <p>{words.inNotResized}</p>}
      <Problems problems={[...close.problems, ...resize.problems]} />
      <ResizeOffer
        batchId={batch.id}
        position={screen.position}
        moreGrams="0"
        isBusy={close.isBusy || resize.isBusy}
        onTake={(offer) => void take(offer)}
      />
      <Button isBench isWide onPress={() => setSaying(true)}>
        {words.keepAsIs}
      </Button>
      <DeviationDialog
        title={makingWords.outsideTitle}
        isOpen={isSaying}
        onClose={() => setSaying(false)}
        onSaid={(said) =>
          void leave(said).then((isClosed) => {
            if (!isClosed) return;
            onClose();
            onDone();
          })
        }
        saveWord={words.closeTap}
      />
    </>
  );
}
