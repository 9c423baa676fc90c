import { useParams } from '@tanstack/react-router';
import {
  aimWords,
  fillingWords,
  sayDateWithYear,
  sayDecimal,
  tareWords,
  wayWords,
} from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { StateLine } from '../../away/state-line.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Figures } from '../../parts/figures.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { ShowWorking } from '../../parts/show-working.tsx';
import { Page } from '../../shell/page.tsx';
import { showAmount } from '../../show/show-amount.ts';
import { OpenClaims } from '../away/claims-card.tsx';
import { AimCard } from './aim-card.tsx';
import { ChangeWay } from './change-way.tsx';
import { CloseRun } from './close-run.tsx';
import { CostCard } from './cost-card.tsx';
import { FillChart } from './fill-chart.tsx';
import { FillPad } from './fill-pad.tsx';
import { HeldNotice } from './held-notice.tsx';
import { OtherRuns } from './other-runs.tsx';
import { ReadyCard, useReady } from './ready-card.tsx';
import { ReadySaid } from './ready-said.tsx';
import { ReleaseCard } from './release-card.tsx';
import styles from './run.module.css';
import { isTin, type Run } from './run.ts';
import { TinsAirCard } from './tins-air-card.tsx';
import { useKeptRun } from './use-kept-run.ts';
import { WeightList } from './weight-list.tsx';

export function RunPage() {
  const { id } = useParams({ from: '/filling/$id' });
  return (
    <Loaded read={useRead('getRun', { params: { id } })} title={fillingWords.title('')}>
      {(run) => <RunView run={run} />}
    </Loaded>
  );
}

const RunLinks = ({ run }: { readonly run: Run }) => (
  <FormActions>
    <LinkButton to={`/labels/${run.id}`}>{fillingWords.label}</LinkButton>
    {run.lotId !== null && <LinkButton to={`/trace/${run.lotId}`}>{fillingWords.trace}</LinkButton>}
  </FormActions>
);

function RunView({ run: told }: { readonly run: Run }) {
  const run = useKeptRun(told);
  return (
    <Page
      title={fillingWords.title(run.number)}
      says={<Sentence saying={run.sentence} />}
      above={<Above run={run} />}
      soft={run.bestBefore === null ? undefined : fillingWords.bestBefore(sayDateWithYear(run.bestBefore))}
      // While it is filled, the head leaves its room to the scale and its keys; the label comes after them.
      actions={run.state === 'filling' ? undefined : <RunLinks run={run} />}
    >
      <OpenClaims claims={run.claims} />
      <HeldNotice run={run} />
      {run.state === 'filling' ? <Filling run={run} /> : <Filled run={run} />}
      {run.lotId !== null && <CostCard runId={run.id} />}
    </Page>
  );
}

/** While tins are weighed: where their weights are. */
const Above = ({ run }: { readonly run: Run }) => (
  <span className={styles.above}>
    {`${run.number} ${run.productName}`}
    {run.state === 'filling' && <StateLine />}
  </span>
);

/** One step a screen: before the first tin the questions, then the scale; everything else stands below it. */
function Filling({ run }: { readonly run: Run }) {
  const ready = useReady(run);
  // As many as were wanted, and none too light: closing comes next, and another tin may follow all the same.
  const isFull = run.summary.filled > 0 && run.summary.stillToFill === 0;
  if (ready.kind)
    return (
      <ReadyCard
        key={ready.kind}
        run={run}
        kind={ready.kind}
        onSaid={() => ready.again(null)}
        onLater={(kind) => {
          ready.later(kind);
          ready.again(null);
        }}
      />
    );
  return (
    <>
      {isFull && <CloseRun run={run} />}
      <FillPad run={run} />
      <TinsAirCard run={run} />
      <OtherRuns run={run} />
      <Summary run={run} />
      <FormActions>
        <ChangeWay run={run} />
        <LinkButton to={`/labels/${run.id}`}>{fillingWords.label}</LinkButton>
      </FormActions>
      <div className={styles.weights}>
        <FillChart run={run} />
        <WeightList run={run} />
      </div>
      <AimCard run={run} />
      <ReadySaid run={run} onAgain={ready.again} />
      {run.summary.filled > 0 && !isFull && <CloseRun run={run} />}
    </>
  );
}

const Filled = ({ run }: { readonly run: Run }) => (
  <>
    <ReleaseCard run={run} />
    <OtherRuns run={run} />
    <Summary run={run} />
    <div className={styles.weights}>
      <FillChart run={run} />
      <WeightList run={run} />
    </div>
    <ReadySaid run={run} />
  </>
);

const Summary = ({ run }: { readonly run: Run }) => {
  const kept = run.weights.filter(isTin).map((weight) => Number(weight.netGrams));
  return (
    <>
      <Figures>
        <Figure label={fillingWords.declared} value={run.declaredGrams} unit="g" />
        <Figure label={fillingWords.aimNet} value={run.aimGrams} unit="g" />
        {run.state === 'filling' && (
          <Figure
            label={fillingWords.still}
            value={run.summary.stillToFill}
            hint={`${fillingWords.bowl}: ${run.summary.bowlHolds}`}
          />
        )}
        <Figure
          label={
            run.summary.counting === run.summary.filled
              ? fillingWords.mean
              : fillingWords.meanOf(run.summary.counting)
          }
          value={run.summary.meanGrams === null ? '–' : sayDecimal(run.summary.meanGrams)}
          unit={run.summary.meanGrams === null ? undefined : 'g'}
          hint={
            run.summary.giveawayGrams === null
              ? undefined
              : `${fillingWords.giveaway}: ${showAmount(run.summary.giveawayGrams, 'g')}`
          }
        />
      </Figures>
      <p className="soft small">
        {wayWords.now(wayWords.short[run.way])}. {aimWords.errors(run.errorGrams)}
        {run.way === 'mean' && run.tares.length < 2 && ` ${tareWords.spreadUnknown}`}
      </p>
      {run.tolerableErrorGrams !== null && (
        <p className="soft small">
          {fillingWords.limits[run.fillBasis](
            run.tolerableErrorGrams,
            run.limit1Grams ?? '',
            run.limit2Grams ?? '',
          )}
        </p>
      )}
      {kept.length > 0 && (
        <ShowWorking
          calculation="batch-weight-test"
          input={{
            nominalGrams: Number(run.declaredGrams),
            batchSize: kept.length,
            weightsGrams: kept,
            basis: run.fillBasis,
          }}
        />
      )}
    </>
  );
};
