import { useState } from 'react';
import { sayProblem, weighInWords as words } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import type { BenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import type { Addition, Batch } from './batch.ts';
import styles from './bench.module.css';
import mishap from './mishap.module.css';
import { ResizeOffer } from './resize-offer.tsx';
import type { Asked, WeighIn } from './use-weigh-in.ts';
import { bandVerdict } from './weight-verdict.ts';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly weigh: WeighIn;
  readonly asked: Asked;
  /** It is kept as it is, and said why. */
  readonly onKeep: () => void;
  readonly onLotEmpty: () => void;
  /** The bench's own, since this dialog is gone once the weighing stands. */
  readonly resize: BenchWrite<'resizeBatch'>;
  /** It is entered, and the rest was not made larger or smaller: that is said, and offered again. */
  readonly onNotResized: () => void;
}

/** Too much or too little: the ways on, the first of them one tap. */
export function OffTargetDialog({ batch, screen, weigh, asked, onKeep, onLotEmpty, ...on }: Props) {
  const { resize, onNotResized } = on;
  const [isBusy, setBusy] = useState(false);
  const { said, problem } = asked;
  const isHigh = bandVerdict(said.net, weigh.band) === 'high';
  const isOver = problem.code === 'weighed-over-limits';
  const title = (isHigh ? words.tooMuchTitle : words.tooLittleTitle)(screen.itemName, said.net);

  async function take(offer: AnswerOf<'offerResize'>): Promise<void> {
    setBusy(true);
    const deviation = {
      what: words.autoOver(said.net, weigh.band.targetGrams),
      why: isHigh ? words.autoOverWhy : words.autoUnderWhy,
    };
    const isIn = await weigh.send(said, { deviation, isOverKnown: isOver, stays: true });
    const body = { position: screen.position, upon: offer.upon };
    if (isIn && !(await resize.write({ params: { id: batch.id }, body }))) onNotResized();
    setBusy(false);
  }
  return (
    <Dialog
      isBench
      title={title}
      isOpen
      onClose={weigh.forgetAsked}
      closeWord={isHigh ? words.takeOut : words.addMore}
    >
      {isOver && (
        <div className={styles.wrong}>
          <p>
            <strong>{sayProblem(problem).says}</strong>
          </p>
        </div>
      )}
      <ResizeOffer
        batchId={batch.id}
        position={screen.position}
        moreGrams={said.net}
        isBusy={isBusy}
        onTake={(offer) => void take(offer)}
      />
      <div className={mishap.choices}>
        {!isHigh && (
          <Button isBench isWide onPress={onLotEmpty}>
            {words.lotEmpty}
          </Button>
        )}
        <Button isBench isWide onPress={onKeep}>
          {words.keepAsIs}
        </Button>
      </div>
    </Dialog>
  );
}
