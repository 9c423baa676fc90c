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
  const [said, setSaid] = useState<DeviationSaid | null>(null);
  const close = useBenchWrite('closeAddition');
  const params = { id: batch.id };

  const isOver = close.problems.some(({ code }) => code === 'closed-over-limits');

  async function leave(deviation: DeviationSaid, isOverKnown = false): Promise<boolean> {
    setSaying(false);
    setSaid(deviation);
    const body = { position: screen.position, deviation, isOverKnown };
    return (await close.write({ params, body })) !== undefined;
  }
  async function leaveSo(deviation: DeviationSaid, isOverKnown = false): Promise<void> {
    if (!(await leave(deviation, isOverKnown))) return;
    onClose();
    onDone();
  }
  async function take(offer: AnswerOf<'offerResize'>): Promise<void> {
    const what = words.autoOver(screen.inGrams, screen.targetGrams);
    // It may be closed already, and only the rest be still to be made smaller.
    // The rest is made smaller with it: no limit is passed by that.
    if (!screen.done && !(await leave({ what, why: words.autoUnderWhy }, true))) return;
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
      {isOver && said ? (
        <Button isBench isWide isBusy={close.isBusy} onPress={() => void leaveSo(said, true)}>
          {words.keepOver}
        </Button>
      ) : (
        <Button isBench isWide onPress={() => setSaying(true)}>
          {words.keepAsIs}
        </Button>
      )}
      <DeviationDialog
        title={makingWords.outsideTitle}
        isOpen={isSaying}
        onClose={() => setSaying(false)}
        onSaid={(given) => void leaveSo(given)}
        saveWord={words.closeTap}
      />
    </>
  );
}
