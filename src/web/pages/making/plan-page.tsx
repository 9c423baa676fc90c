import { useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { makingWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Loaded } from '../../parts/loaded.tsx';
import { NeedsPage } from '../../shell/needs-page.tsx';
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
          {(sold) =>
            all.some(({ latest }) => latest) ? (
              <Plan formulas={all} products={sold} />
            ) : (
              <NoFormula unwritten={all[0]?.id} />
            )
          }
        </Loaded>
      )}
    </Loaded>
  );
};

/** Nothing can be planned without a recipe: a formula has to be begun, or the begun one written on. */
const NoFormula = ({ unwritten }: { readonly unwritten: string | undefined }) => (
  <NeedsPage
    title={makingWords.planTitle}
    says={unwritten === undefined ? makingWords.noFormula : makingWords.noRecipe}
    to={unwritten === undefined ? '/formulas/new' : `/formulas/${unwritten}/recipe`}
    act={unwritten === undefined ? makingWords.toFormula : makingWords.toRecipe}
  />
);

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
      <PlanView wish={wish} onChange={setWish} formulas={formulas} products={products} />
    </Page>
  );
}
