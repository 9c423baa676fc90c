import { useState } from 'react';
import { exact, readDecimal, toText } from '../../../core/quantity/index.ts';
import { sayGrams, weighInWords as words } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Problems } from '../../parts/problems.tsx';
import type { Addition, Batch } from './batch.ts';
import styles from './mishap.module.css';
import { useLotsOf } from './use-lots-of.ts';
import type { Said, WeighIn } from './use-weigh-in.ts';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly weigh: WeighIn;
  readonly said: Said;
  readonly onClose: () => void;
}

/** A lot that ran out in the middle: what went in counts, the rest comes from another, and its book is put right. */
export function LotEmpty({ batch, screen, weigh, said, onClose }: Props) {
  const [left, setLeft] = useState<{ lotId: string; lot: string; grams: string } | null>(null);
  const known = useLotsOf(screen.itemId, screen.itemName);
  const lots = known ?? [];
  const own = lots.find((lot) => lot.id === said.lotId);
  const rest = lessOf(weigh.band.targetGrams, said.net);
  if (left) return <BookRest batch={batch} left={left} onClose={onClose} />;
  const others = lots.filter((lot) => lot.id !== said.lotId && lot.onHand !== '0');

  async function take(lotId: string): Promise<void> {
    if (!(await weigh.send({ ...said, isPart: true, restLotId: lotId }))) return;
    const byBook = own ? lessOf(own.onHand, said.net) : '0';
    if (own && exact(byBook).gt(0)) setLeft({ lotId: own.id, lot: own.number, grams: byBook });
    else onClose();
  }
  return (
    <>
      <p>{words.wentIn(said.net, own?.number ?? screen.lotNumber ?? '')}</p>
      <Problems problems={weigh.problems} />
      <p>{others.length > 0 ? words.restFrom(rest) : known ? words.noOtherLot : words.lotsNotKnown}</p>
      <div className={styles.choices}>
        {others.length === 0 && (
          <Button
            isAct
            isBench
            isWide
            onPress={() => {
              onClose();
              weigh.enter();
            }}
          >
            {words.allThereIs}
          </Button>
        )}
        {others.map((lot, index) => (
          <Button
            key={lot.id}
            isBench
            isWide
            isAct={index === 0}
            isBusy={weigh.save.isBusy}
            onPress={() => void take(lot.id)}
          >
            {words.restFromLot(lot.number, sayGrams(lot.onHand))}
          </Button>
        ))}
      </div>
    </>
  );
}

interface BookProps {
  readonly batch: Batch;
  readonly left: { readonly lotId: string; readonly lot: string; readonly grams: string };
  readonly onClose: () => void;
}

/** The book still has some of what is empty: booked as a difference of the count, or the tub is weighed. */
function BookRest({ batch, left, onClose }: BookProps) {
  const count = useBenchWrite('countLot');
  async function bookEmpty(): Promise<void> {
    const body = { grossGrams: '0', tareGrams: '0', reason: words.bookReason(batch.number) };
    if (await count.write({ params: { id: left.lotId }, body })) onClose();
  }
  return (
    <>
      <p>{words.bookEmpty(left.lot, left.grams)}</p>
      <Problems problems={count.problems} />
      <div className={styles.choices}>
        <Button isAct isBench isWide isBusy={count.isBusy} onPress={() => void bookEmpty()}>
          {words.bookEmptyTap}
        </Button>
        <LinkButton isBench isWide to={`/shelf/lots/${left.lotId}/weigh?back=/making/${batch.id}`}>
          {words.bookWeigh}
        </LinkButton>
        <Button isBench isWide onPress={onClose}>
          {words.bookLater}
        </Button>
      </div>
    </>
  );
}

/** Never below nothing; what cannot be read is told as the whole. */
function lessOf(whole: string, part: string): string {
  const read = readDecimal(part, 'part');
  if (!read.ok) return whole;
  const left = exact(whole).minus(read.value);
  return left.lt(0) ? '0' : toText(left);
}
