import { makingWords } from '../../../words/index.ts';
import { StateLine } from '../../away/state-line.tsx';
import { WakeLine } from '../../away/wake-line.tsx';
import { Button } from '../../parts/button.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { PageHeading } from '../../shell/page-heading.tsx';
import { OpenClaims } from '../away/claims-card.tsx';
import { AbandonBatch } from './abandon-batch.tsx';
import { AdditionScreen } from './addition-screen.tsx';
import { AsWeighed } from './as-weighed.tsx';
import type { Batch, Screen } from './batch.ts';
import styles from './bench.module.css';
import { Deviation } from './deviation.tsx';
import { FinishScreen } from './finish-screen.tsx';
import { timerOf } from './list-timers.ts';
import { nameOf } from './name-of.ts';
import { NewsLine } from './news-line.tsx';
import { RunningTimers } from './running-timers.tsx';
import { StepScreen } from './step-screen.tsx';
import { useAhead } from './use-ahead.ts';
import { useBenchPlace } from './use-bench-place.ts';
import { useKeptBatch } from './use-kept-batch.ts';
import { useLotsAhead } from './use-lots-of.ts';
import { WorstCase } from './worst-case.tsx';

const LISTED = [{}] as const;

/** What runs by itself may be left: the next thing is weighed meanwhile. */
const furthest = (screens: readonly Screen[]): number => {
  const index = screens.findIndex((screen) => screen.done === null && !isRunning(screen));
  return index === -1 ? screens.length : index;
};

const isRunning = (screen: Screen): boolean => screen.kind === 'step' && timerOf(screen) !== undefined;

/** One step a screen. It opens where the work stands; done screens can be looked at again. */
export function Bench({ batch: told }: { readonly batch: Batch }) {
  const batch = useKeptBatch(told);
  useLotsAhead(batch);
  // The way to the other batches, and to what is filled, while the workshop is away.
  useAhead('listBatches', LISTED);
  const { screens } = batch;
  const { shown, setShown, goOnFrom } = useBenchPlace(batch);
  const screen = screens[shown];
  // An answer may come late: whoever has gone elsewhere meanwhile is not moved from there.
  const goOn = () => goOnFrom(shown);
  const next = screens[shown + 1];
  const doneWord = next ? makingWords.doneNext(nameOf(next)) : makingWords.doneLast;
  return (
    <div className={styles.bench}>
      <div className={styles.top}>
        <p>
          <strong>{batch.number}</strong> <span className="soft">{batch.formulaName}</span>
        </p>
        <StateLine />
        <p className="soft">
          {batch.asWeighed && batch.purpose === 'sale'
            ? makingWords.purposeHeld
            : makingWords.purpose[batch.purpose]}
        </p>
      </div>
      <Progress screens={screens} shown={shown} />
      <NewsLine batch={told} />
      <PageHeading title={`${batch.number}: ${screen ? nameOf(screen) : makingWords.allDone}`}>
        <span className={styles.name}>{screen ? nameOf(screen) : makingWords.allDone}</span>
      </PageHeading>
      <RunningTimers batch={batch} shown={shown} onShow={setShown} />
      <OpenClaims claims={batch.claims} />
      <AsWeighed batch={batch} onShow={setShown} />
      {screen === undefined && <WorstCase batch={batch} />}
      {screen === undefined && <FinishScreen batch={batch} />}
      {screen?.kind === 'addition' && (
        <AdditionScreen
          key={screen.screen}
          batch={batch}
          screen={screen}
          doneWord={doneWord}
          onDone={goOn}
          all={screens.length}
        />
      )}
      {screen?.kind === 'step' && (
        <StepScreen
          key={screen.screen}
          batch={batch}
          screen={screen}
          doneWord={doneWord}
          onDone={goOn}
          all={screens.length}
        />
      )}
      <div className={styles.under}>
        <Button isBench isDisabled={shown === 0} onPress={() => setShown(shown - 1)}>
          {makingWords.back}
        </Button>
        <Button isBench isDisabled={shown >= furthest(screens)} onPress={goOn}>
          {makingWords.forward}
        </Button>
        <Deviation batch={batch} screen={screen?.screen ?? null} />
        <PrintLink isBench paper="getBatchSheet" address={{ params: { id: batch.id } }}>
          {makingWords.sheetPdf}
        </PrintLink>
        <AbandonBatch batch={batch} />
        <LinkButton isBench to="/making">
          {makingWords.title}
        </LinkButton>
      </div>
      <WakeLine />
    </div>
  );
}

interface ProgressProps {
  readonly screens: readonly Screen[];
  readonly shown: number;
}

const Progress = ({ screens, shown }: ProgressProps) => (
  <div
    className={styles.steps}
    role="img"
    aria-label={makingWords.stepOf(Math.min(shown + 1, screens.length), screens.length)}
  >
    {screens.map((screen, index) => (
      <i
        key={screen.screen}
        className={index === shown ? styles.now : screen.done ? styles.done : undefined}
      />
    ))}
  </div>
);
