import { Link } from '@tanstack/react-router';
import { handWords, makingWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Moment } from '../../parts/moment.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import { showAmount } from '../../show/show-amount.ts';

type Batch = AnswerOf<'listBatches'>[number];

export const MakingPage = () => (
  <Loaded read={useRead('listBatches')} title={makingWords.title}>
    {(batches) => <MakingView batches={batches} />}
  </Loaded>
);

function MakingView({ batches }: { readonly batches: readonly Batch[] }) {
  const going = batches.filter((batch) => batch.state === 'making');
  const done = batches.filter((batch) => batch.state !== 'making');
  return (
    <Page
      title={makingWords.title}
      says={makingWords.says(going.length)}
      actions={
        <>
          <LinkButton to="/making/new" isAct>
            {makingWords.start}
          </LinkButton>
          <LinkButton to="/making/by-hand">{handWords.start}</LinkButton>
        </>
      }
    >
      <Card title={makingWords.going} isFlush>
        <List rows={going} keyOf={(batch) => batch.id} empty={makingWords.noneGoing}>
          {(batch) => <BatchLine batch={batch} />}
        </List>
      </Card>
      <Card title={makingWords.done} isFlush>
        <List rows={done} keyOf={(batch) => batch.id} empty={makingWords.noneDone}>
          {(batch) => <BatchLine batch={batch} />}
        </List>
      </Card>
    </Page>
  );
}

const STATES = { making: 'going', made: 'ready', abandoned: 'stop' } as const;

const BatchLine = ({ batch }: { readonly batch: Batch }) => (
  <>
    <ListRow>
      <Link to="/making/$id" params={{ id: batch.id }}>
        {batch.number} {batch.formulaName}
      </Link>
      <State kind={STATES[batch.state]}>{makingWords.state[batch.state]}</State>
    </ListRow>
    <p className="soft">
      {showAmount(batch.plannedGrams, 'g')} · {makingWords.purpose[batch.purpose]} ·{' '}
      <Moment at={batch.startedAt} />
      {batch.lotOnHand !== null &&
        batch.lotOnHand !== '0' &&
        ` · ${makingWords.leftInBowl(showAmount(batch.lotOnHand, 'g'))}`}
    </p>
    {batch.runs.map((run) => (
      <p key={run.id}>
        <Link to="/filling/$id" params={{ id: run.id }}>
          {run.number} {run.productName}
        </Link>{' '}
        <span className="soft">{makingWords.runState[run.state]}</span>
      </p>
    ))}
    {batch.state === 'making' && (
      <ListFoot>
        <span className="soft">{makingWords.steps(batch.screensDone, batch.screensTotal)}</span>
        <LinkButton to={`/making/${batch.id}`} isAct isBench label={`${makingWords.goOn}: ${batch.number}`}>
          {makingWords.goOn}
        </LinkButton>
      </ListFoot>
    )}
  </>
);
