import { useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { makingWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import { PlanForm } from './plan-form.tsx';
import { PlanView } from './plan-view.tsx';
import { firstWish, type PlanWish } from './plan-wish.ts';

/** Sized, checked and laid out before anything is weighed; nothing is written until it is started. */
export const PlanPage = () => {
  const formulas = useRead('listFormulas');
  const products = useRead('listProducts');
  return (
    <Loaded read={formulas} title={makingWords.planTitle}>
      {(all) => (
        <Loaded read={products} title={makingWords.planTitle}>
          {(sold) => <Plan formulas={all} products={sold} />}
        </Loaded>
      )}
    </Loaded>
  );
};

interface Props {
  readonly formulas: AnswerOf<'listFormulas'>;
  readonly products: AnswerOf<'listProducts'>;
}

function Plan({ formulas, products }: Props) {
  const search = useSearch({ from: '/making/new' });
  const [wish, setWish] = useState<PlanWish>(() => firstWish(search, formulas, products));
  return (
    <Page title={makingWords.planTitle} says={makingWords.planSays}>
      <PlanForm wish={wish} onChange={setWish} formulas={formulas} products={products} />
      <PlanView wish={wish} formulas={formulas} />
    </Page>
  );
}
