import { useParams } from '@tanstack/react-router';
import { formulaWords, productFileWords, sayDecimal, sayGrams, scentWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Table } from '../../parts/table.tsx';
import { Page } from '../../shell/page.tsx';
import type { Formula } from './formula.ts';
import { WanderingCard } from './wandering-card.tsx';

export function FormulaPage() {
  const { id } = useParams({ from: '/formulas/$id' });
  return (
    <Loaded read={useRead('getFormula', { params: { id } })} title={formulaWords.title}>
      {(formula) => <FormulaView formula={formula} />}
    </Loaded>
  );
}

type Revision = NonNullable<Formula['latest']>;

const FormulaView = ({ formula }: { readonly formula: Formula }) => (
  <Page
    title={formula.name}
    soft={
      formula.latest
        ? `${formulaWords.kind[formula.kind]} ${formula.code} · ${formulaWords.revision(formula.latest.number)} · ${formulaWords.standing[formula.latest.details.standing]}${formula.latest.isFixed ? ` · ${formulaWords.fixed}` : ''}`
        : formulaWords.noRevision
    }
    actions={
      <>
        <LinkButton to={`/formulas/${formula.id}/recipe`}>
          {formula.latest ? formulaWords.change : formulaWords.firstLine}
        </LinkButton>
        {formula.latest && <LinkButton to={`/formulas/${formula.id}/check`}>{formulaWords.check}</LinkButton>}
        {formula.latest && formula.kind === 'mixture' && (
          <LinkButton to={`/formulas/${formula.id}/scent`}>{scentWords.open}</LinkButton>
        )}
        {formula.latest && (
          <LinkButton to={`/formulas/${formula.id}/worksheet`}>{productFileWords.worksheet.open}</LinkButton>
        )}
        {formula.latest && (
          <LinkButton to={`/making/new?formula=${formula.id}`} isAct>
            {formulaWords.makeIt}
          </LinkButton>
        )}
      </>
    }
  >
    {formula.latest && <RecipeView revision={formula.latest} />}
    <WanderingCard formulaId={formula.id} />
  </Page>
);

const RecipeView = ({ revision }: { readonly revision: Revision }) => (
  <>
    <Table
      caption={formulaWords.linesTitle}
      rows={revision.lines.map((line, index) => ({ ...line, key: `${index}` }))}
      keyOf={(line) => line.key}
      columns={[
        { head: formulaWords.item, cell: (line) => line.itemName },
        { head: formulaWords.stage, cell: (line) => line.stage },
        { head: formulaWords.grams, cell: (line) => sayGrams(line.grams), isNumber: true },
        { head: formulaWords.percent, cell: (line) => `${sayDecimal(line.percent)} %`, isNumber: true },
      ]}
    />
    <p>
      <strong>
        {formulaWords.total}: {sayGrams(revision.totalGrams)}, 100 %
      </strong>{' '}
      <span className="soft">
        {revision.stages
          .map((stage) => `${stage.name} ${sayGrams(stage.grams)}, ${sayDecimal(stage.percent)} %`)
          .join(' · ')}
      </span>
    </p>
    <Card title={formulaWords.stepsTitle} isFlush>
      <List
        rows={revision.details.steps.map((step, index) => ({ ...step, key: `${index}` }))}
        keyOf={(step) => step.key}
        empty={formulaWords.addStep}
      >
        {(step) => (
          <>
            <p>
              <strong>{step.stage}:</strong> {step.what}
              <span className="soft">
                {step.leastCelsius !== null &&
                  ` · ${step.leastCelsius}${step.mostCelsius === null ? '' : ` to ${step.mostCelsius}`} °C`}
                {step.minutes !== null && ` · ${step.minutes} min`}
              </span>
            </p>
            {step.caution !== '' && <p className="soft">{step.caution}</p>}
          </>
        )}
      </List>
    </Card>
    {revision.details.note !== '' && <p>{revision.details.note}</p>}
    <p className="soft">{formulaWords.hotFat}</p>
  </>
);
