import { makingWords, sayGrams } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import { showAmount } from '../../show/show-amount.ts';
import type { BatchWish } from './plan-wish.ts';

type Plan = AnswerOf<'planBatch'>;

interface LessProps {
  readonly plan: Plan;
  readonly wish: BatchWish;
  readonly onPress: () => void;
}

/** What is there suffices for less: that much, in one tap; nothing where it suffices for all, or for nothing. */
export function MakeLess({ plan, wish, onPress }: LessProps) {
  const tins = plan.tins.filter(({ possible }) => possible > 0);
  const isLess = plan.tins.some(({ possible, wanted }) => possible < wanted);
  if (wish.size.by === 'tins')
    return isLess && tins.length > 0 ? (
      <Button isAct onPress={onPress}>
        {makingWords.makeInstead(
          tins
            .map(({ possible, productName }) => makingWords.possible(possible, possible, productName))
            .join(', '),
        )}
      </Button>
    ) : null;
  return plan.hindrances.some(({ code }) => code === 'hindrance-too-large') && plan.batchGrams !== '0' ? (
    <Button isAct onPress={onPress}>
      {makingWords.makeInstead(sayGrams(plan.batchGrams))}
    </Button>
  ) : null;
}

/** Lots of a base that is short which stand there and wait for a word that they are firm. */
export function NotFirm({ itemId, name }: { readonly itemId: string; readonly name: string }) {
  const firm = useWrite('sayFirm');
  const found = useRead('findLots', { query: { like: name } }).data ?? [];
  const waiting = found.filter(
    (lot) => lot.itemId === itemId && lot.status === 'quarantine' && lot.onHand !== '0',
  );
  return (
    <>
      <Problems problems={firm.problems} />
      {waiting.map((lot) => (
        <p key={lot.id}>
          {makingWords.waitsForWord(lot.number, showAmount(lot.onHand, lot.unit))}{' '}
          <Button
            isBusy={firm.isBusy}
            onPress={() => void firm.write({ params: { id: lot.id }, body: { remark: '' } })}
          >
            {makingWords.itIsFirm(lot.number)}
          </Button>
        </p>
      ))}
    </>
  );
}
