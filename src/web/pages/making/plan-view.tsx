import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { makingWords, sayGrams } from '../../../words/index.ts';
import { call } from '../../api/call.ts';
import { problemsOf } from '../../api/problems-of.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { showAmount } from '../../show/show-amount.ts';
import styles from './plan.module.css';
import { MakeLess, NotFirm } from './plan-ways-on.tsx';
import { type BatchWish, batchWish, makeLess, type PlanWish } from './plan-wish.ts';
import { SheetTable } from './sheet-table.tsx';
import { WeighingWays } from './weighing-ways.tsx';

type Plan = AnswerOf<'planBatch'>;

interface Props {
  readonly wish: PlanWish;
  readonly onChange: (wish: PlanWish) => void;
  readonly formulas: AnswerOf<'listFormulas'>;
  readonly products: AnswerOf<'listProducts'>;
}

export function PlanView({ wish, onChange, formulas, products }: Props) {
  const asked = batchWish(wish, formulas, products);
  const read = useQuery({
    queryKey: ['planBatch', asked],
    queryFn: ({ signal }) => call('planBatch', { body: asked as BatchWish }, signal),
    enabled: asked !== undefined,
    placeholderData: keepPreviousData,
  });
  if (!asked) return null;
  if (read.error) return <Problems problems={problemsOf(read.error)} />;
  if (!read.data) return null;
  const { data: plan } = read;
  return (
    <PlanAnswer
      plan={plan}
      wish={asked}
      formulaId={wish.formulaId}
      onMakeLess={() => onChange(makeLess(wish, plan))}
    />
  );
}

interface AnswerProps {
  readonly plan: Plan;
  readonly wish: BatchWish;
  readonly formulaId: string;
  readonly onMakeLess: () => void;
}

function PlanAnswer({ plan, wish, formulaId, onMakeLess }: AnswerProps) {
  const start = useWrite('startBatch');
  const navigate = useNavigate();
  const isTrial = wish.purpose === 'trial';
  /** That nothing of it may be made for sale comes before how much of it there would be. */
  const isBarred = plan.limitedBy.code === 'limited-by-check';
  const isStuck = plan.short.length > 0 || (!isTrial && plan.hindrances.length > 0);
  const sum = makingWords.saysPlan(sayGrams(plan.batchGrams), plan.formulaName);
  async function begin() {
    const batch = await start.write({ body: { wish } });
    if (batch) await navigate({ to: '/making/$id', params: { id: batch.id } });
  }
  return (
    <section className={styles.answer} aria-live="polite">
      <h2 className={styles.sum}>{isBarred ? <Sentence saying={plan.limitedBy} /> : sum}</h2>
      {plan.hindrances.length > 0 && (
        <Card title={makingWords.hindrances[wish.purpose]}>
          {plan.hindrances.map((saying) => (
            <State key={JSON.stringify(saying)} kind={isTrial ? 'watch' : 'stop'}>
              <Sentence saying={saying} />
            </State>
          ))}
          <div className={styles.acts}>
            {!isBarred && <MakeLess plan={plan} wish={wish} onPress={onMakeLess} />}
            <LinkButton to={`/formulas/${formulaId}/check`}>{makingWords.seeCheck}</LinkButton>
          </div>
        </Card>
      )}
      <p>{isBarred ? sum : <Sentence saying={plan.limitedBy} />}</p>
      {(isBarred ? [] : plan.tins).map((tin) => (
        <p key={tin.productId}>
          <State kind={tin.possible >= tin.wanted ? 'ready' : 'stop'}>
            {makingWords.possible(tin.possible, tin.wanted, tin.productName)}
          </State>
        </p>
      ))}
      <ul className="soft">
        {plan.sizing.map((saying) => (
          <li key={JSON.stringify(saying)}>
            <Sentence saying={saying} />
          </li>
        ))}
      </ul>
      {plan.short.length > 0 && (
        <Card title={makingWords.short}>
          {plan.short.map((item) => (
            <p key={item.itemId}>
              <State kind="stop">{item.name}</State>{' '}
              {makingWords.shortLine(showAmount(item.need, item.unit), showAmount(item.have, item.unit))}
            </p>
          ))}
          {plan.short
            .filter(({ itemKind }) => itemKind === 'formula')
            .map((item) => (
              <NotFirm key={item.itemId} itemId={item.itemId} name={item.name} />
            ))}
        </Card>
      )}
      <Card title={makingWords.sheet} isFlush>
        <SheetTable rows={plan.rows} />
      </Card>
      {plan.rows.length > 0 && <WeighingWays plan={plan} />}
      <Problems problems={start.problems} />
      {isStuck && <p className="soft">{makingWords.cannotStart}</p>}
      <div>
        <Button isAct isBench isBusy={start.isBusy} isDisabled={isStuck} onPress={() => void begin()}>
          {isTrial ? makingWords.startTrial : makingWords.startSale}
        </Button>
      </div>
    </section>
  );
}
