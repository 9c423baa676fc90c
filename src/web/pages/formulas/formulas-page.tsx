import { formulaWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import type { Formula } from './formula.ts';
import { FormulaLine } from './formula-line.tsx';

export const FormulasPage = () => (
  <Loaded read={useRead('listFormulas')} title={formulaWords.title}>
    {(formulas) => <FormulasView formulas={formulas} />}
  </Loaded>
);

function FormulasView({ formulas }: { readonly formulas: readonly Formula[] }) {
  const bases = formulas.filter((formula) => formula.kind === 'base');
  const mixtures = formulas.filter((formula) => formula.kind === 'mixture');
  return (
    <Page
      title={formulaWords.title}
      says={formulas.length === 0 ? formulaWords.saysNone : formulaWords.says(bases.length, mixtures.length)}
      soft={formulaWords.soft}
      actions={
        <>
          <LinkButton to="/reports">{formulaWords.reports}</LinkButton>
          <LinkButton to="/products">{formulaWords.products}</LinkButton>
          <LinkButton to="/formulas/new" isAct>
            {formulaWords.write}
          </LinkButton>
        </>
      }
    >
      <Card title={formulaWords.bases} isFlush>
        <List rows={bases} keyOf={(formula) => formula.id} empty={formulaWords.noBase}>
          {(formula) => <FormulaLine formula={formula} />}
        </List>
      </Card>
      <Card title={formulaWords.mixtures} isFlush>
        <List rows={mixtures} keyOf={(formula) => formula.id} empty={formulaWords.noMixture}>
          {(formula) => <FormulaLine formula={formula} />}
        </List>
      </Card>
    </Page>
  );
}
