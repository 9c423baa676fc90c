import { useState } from 'react';
import { makingWords, partWords, sayDecimal, sayGrams, sayProblem } from '../../../words/index.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Addition, Batch } from './batch.ts';
import styles from './bench.module.css';
import { DeviationDialog, type DeviationSaid } from './deviation-dialog.tsx';
import { isLaterDone } from './later-done.ts';
import { OtherLot } from './other-lot.tsx';
import { StrikeAddition } from './strike-addition.tsx';
import { StruckEntries } from './struck-entries.tsx';
import { WeightBand } from './weight-band.tsx';
import { bandVerdict, whyNotWeighed } from './weight-verdict.ts';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly doneWord: string;
  readonly onDone: () => void;
  readonly all: number;
}

/** What the workshop asks back, to be answered with what was done differently and why. */
const IS_ASKED: ReadonlySet<string> = new Set(['weighed-over-limits', 'weighed-late']);

/** One addition: the target in large digits, what the scale shows, whether it lies in the band. */
export function AdditionScreen({ batch, screen, doneWord, onDone, all }: Props) {
  const { draft, set, forget } = useKeptDraft(`bench.${batch.id}.addition.${screen.position}`, { grams: '' });
  const typed = draft.grams;
  const [lotId, setLotId] = useState(screen.lotId);
  const [isAsking, setAsking] = useState(false);
  const save = useWrite('recordAddition');
  if (screen.done) return <DoneAddition batch={batch} screen={screen} all={all} />;
  const verdict = bandVerdict(typed, screen);
  const reweighs = batch.struck.some((entry) => entry.screen === screen.screen);
  const mustExplain =
    verdict === 'low' ||
    verdict === 'high' ||
    lotId !== screen.lotId ||
    (reweighs && isLaterDone(batch.screens, screen));
  const asked = save.problems.find((each) => IS_ASKED.has(each.code));
  const isOver = asked?.code === 'weighed-over-limits';

  async function enter(deviation?: DeviationSaid) {
    setAsking(false);
    const kept = await save.write({
      params: { id: batch.id },
      body: {
        position: screen.position,
        lotId: lotId ?? '',
        scaleId: screen.scaleId,
        actualGrams: typedDecimal(typed),
        ...(deviation ? { deviation, isOverKnown: isOver } : {}),
      },
    });
    if (!kept) return;
    forget();
    onDone();
  }
  /** A number that no scale shows is told first: nobody is asked why. */
  function tryEnter() {
    const wrong = whyNotWeighed(typed);
    if (wrong) save.refuse([wrong]);
    else if (mustExplain) setAsking(true);
    else void enter();
  }
  return (
    <div className={styles.screen}>
      <Where screen={screen} all={all} />
      <Problems problems={asked ? [] : save.problems} />
      <div className={styles.figures}>
        <div>
          <p className="soft">{makingWords.weighOut}</p>
          <p className={styles.digits}>
            {sayDecimal(screen.targetGrams)}
            <small>g</small>
          </p>
        </div>
        <label>
          <span className="soft">{makingWords.onTheScale}</span>
          <span className={styles.digits}>
            <input
              inputMode="decimal"
              autoComplete="off"
              aria-label={makingWords.gramsIn}
              value={typed}
              onChange={(event) => set('grams')(event.target.value)}
              onKeyDown={(event) => event.key === 'Enter' && typed !== '' && tryEnter()}
            />
          </span>
        </label>
      </div>
      <WeightBand typed={typed} screen={screen} verdict={verdict} />
      {screen.caution !== '' && <p className={styles.caution}>{screen.caution}</p>}
      {screen.warning && (
        <p className={styles.caution}>
          <Sentence saying={screen.warning} />
        </p>
      )}
      <div className={styles.dock}>
        <KeyPad value={typed} onChange={set('grams')} />
        <Button isAct isBench isWide isBusy={save.isBusy} isDisabled={typed === ''} onPress={tryEnter}>
          {doneWord}
        </Button>
      </div>
      <OtherLot screen={screen} lotId={lotId} onChange={setLotId} />
      <StruckEntries batch={batch} screen={screen.screen} />
      <DeviationDialog
        title={isOver ? makingWords.overTitle : makingWords.outsideTitle}
        caution={asked && sayProblem(asked)}
        saveWord={isOver ? makingWords.keepOver : partWords.save}
        isOpen={isAsking || asked !== undefined}
        onClose={() => {
          setAsking(false);
          if (asked) save.forget();
        }}
        onSaid={(said) => void enter(said)}
      />
    </div>
  );
}

const Where = ({ screen, all }: { readonly screen: Addition; readonly all: number }) => (
  <div>
    <p className="soft">
      {makingWords.stepOf(screen.screen + 1, all)}.{' '}
      {screen.scaleName === null ? makingWords.anyScale : makingWords.onScale(screen.scaleName)}.{' '}
      {screen.stage}.
    </p>
    <p>
      {makingWords.lotLine(screen.lotNumber ?? partWords.notKnown)}
      {screen.lotNote && (
        <>
          {': '}
          <Sentence saying={screen.lotNote} />
        </>
      )}
    </p>
  </div>
);

const DoneAddition = ({
  batch,
  screen,
  all,
}: {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly all: number;
}) => (
  <div className={styles.screen}>
    <Where screen={screen} all={all} />
    {screen.done && <p>{makingWords.weighed(sayGrams(screen.done.actualGrams), screen.done.by)}</p>}
    {screen.done && <StrikeAddition batch={batch} entryId={screen.done.entryId} />}
    <StruckEntries batch={batch} screen={screen.screen} />
  </div>
);
