import { useState } from 'react';
import { makingWords, partWords, sayGrams } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Batch, Screen } from './batch-page.tsx';
import styles from './bench.module.css';
import { DeviationDialog, type DeviationSaid } from './deviation-dialog.tsx';
import { OtherLot } from './other-lot.tsx';
import { StrikeAddition } from './strike-addition.tsx';
import { WeightBand } from './weight-band.tsx';
import { bandVerdict } from './weight-verdict.ts';

export type Addition = Extract<Screen, { kind: 'addition' }>;

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly doneWord: string;
  readonly onDone: () => void;
  readonly all: number;
}

/** One addition: the target in large digits, what the scale shows, whether it lies in the band. */
export function AdditionScreen({ batch, screen, doneWord, onDone, all }: Props) {
  const [typed, setTyped] = useState('');
  const [lotId, setLotId] = useState(screen.lotId);
  const [isAsking, setAsking] = useState(false);
  const save = useWrite('recordAddition');
  if (screen.done) return <DoneAddition batch={batch} screen={screen} all={all} />;
  const verdict = bandVerdict(typed, screen);
  const mustExplain = verdict === 'low' || verdict === 'high' || lotId !== screen.lotId;
  async function enter(deviation?: DeviationSaid) {
    setAsking(false);
    const kept = await save.write({
      params: { id: batch.id },
      body: {
        position: screen.position,
        lotId: lotId ?? '',
        scaleId: screen.scaleId,
        actualGrams: typedDecimal(typed),
        ...(deviation ? { deviation } : {}),
      },
    });
    if (kept) onDone();
  }
  return (
    <div className={styles.screen}>
      <Where screen={screen} all={all} />
      <div className={styles.figures}>
        <div>
          <p className="soft">{makingWords.weighOut}</p>
          <p className={styles.digits}>
            {screen.targetGrams}
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
              onChange={(event) => setTyped(event.target.value)}
              onKeyDown={(event) =>
                event.key === 'Enter' && typed !== '' && (mustExplain ? setAsking(true) : void enter())
              }
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
      <Problems problems={save.problems} />
      <KeyPad value={typed} onChange={setTyped} />
      <Button
        isAct
        isBench
        isWide
        isBusy={save.isBusy}
        isDisabled={typed === ''}
        onPress={() => (mustExplain ? setAsking(true) : void enter())}
      >
        {doneWord}
      </Button>
      <OtherLot screen={screen} lotId={lotId} onChange={setLotId} />
      <DeviationDialog
        title={makingWords.outsideTitle}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
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
  </div>
);
