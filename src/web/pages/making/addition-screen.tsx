import { useState } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { makingWords, partWords, sayDecimal, sayGrams, sayProblem } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Addition, Batch } from './batch.ts';
import styles from './bench.module.css';
import { DeviationDialog, type DeviationSaid } from './deviation-dialog.tsx';
import { Dock } from './dock.tsx';
import { OtherLot } from './other-lot.tsx';
import { ScaleField } from './scale-field.tsx';
import { StrikeAddition } from './strike-addition.tsx';
import { StruckEntries } from './struck-entries.tsx';
import { WeightBand } from './weight-band.tsx';
import { whyNotWeighed } from './weight-verdict.ts';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly doneWord: string;
  readonly onDone: () => void;
  readonly all: number;
}

/** What the workshop asks back, once nothing else stands in the way: answered with what was done differently and why. */
const IS_ASKED: ReadonlySet<string> = new Set([
  'weight-outside-band',
  'lot-not-planned',
  'weighed-late',
  'weighed-over-limits',
]);

/** One addition: the target in large digits, what the scale shows, whether it lies in the band. */
export function AdditionScreen({ batch, screen, doneWord, onDone, all }: Props) {
  const { draft, set, forget } = useKeptDraft(`bench.${batch.id}.addition.${screen.position}`, { grams: '' });
  const typed = draft.grams;
  const [lotId, setLotId] = useState(screen.lotId);
  /** What the question is about: the answer keeps that, whatever the field says by then. */
  const [weighed, setWeighed] = useState({ grams: '', lotId });
  const save = useBenchWrite('recordAddition');
  if (screen.done) return <DoneAddition batch={batch} screen={screen} all={all} />;
  const asked = save.problems.find((each) => IS_ASKED.has(each.code));
  const isOver = asked?.code === 'weighed-over-limits';

  async function send(what: typeof weighed, deviation?: DeviationSaid) {
    const kept = await save.write({
      params: { id: batch.id },
      body: {
        position: screen.position,
        lotId: what.lotId ?? '',
        scaleId: screen.scaleId,
        actualGrams: typedDecimal(what.grams),
        ...(deviation ? { deviation, isOverKnown: isOver } : {}),
      },
    });
    if (!kept) return;
    forget();
    onDone();
  }
  function enter() {
    // What no scale shows is said beside the digits already.
    if (typed === '' || whyNotWeighed(typed)) return;
    const what = { grams: typed, lotId };
    setWeighed(what);
    void send(what);
  }
  return (
    <>
      <Form label={screen.itemName} problems={asked ? NONE : save.problems} onSubmit={enter} isSaidWithin>
        <div className={styles.screen}>
          <Where screen={screen} all={all} />
          {screen.caution !== '' && <p className={styles.caution}>{screen.caution}</p>}
          {screen.warning && (
            <p className={styles.caution}>
              <Sentence saying={screen.warning} />
            </p>
          )}
          {screen.shareNow && (
            <p className={styles.caution}>
              <Sentence saying={screen.shareNow} />
            </p>
          )}
          <Dock
            wayOut={(found) =>
              found.code === 'lot-too-small' && <ToTheTub batchId={batch.id} lotId={lotId} />
            }
          >
            <div className={styles.figures}>
              <div>
                <p className="soft">{makingWords.weighOut}</p>
                <p className={styles.digits}>
                  {sayDecimal(screen.targetGrams)}
                  <small>g</small>
                </p>
              </div>
              <ScaleField
                label={makingWords.gramsIn}
                where="actualGrams"
                value={typed}
                onChange={set('grams')}
                isBusy={save.isBusy}
              />
            </div>
            <WeightBand typed={typed} screen={screen} />
            <KeyPad value={typed} onChange={set('grams')} isBusy={save.isBusy} />
            <Button type="submit" isAct isBench isWide isBusy={save.isBusy} isDisabled={typed === ''}>
              {doneWord}
            </Button>
          </Dock>
          <OtherLot screen={screen} lotId={lotId} onChange={setLotId} />
          <StruckEntries batch={batch} screen={screen.screen} />
        </div>
      </Form>
      <DeviationDialog
        title={isOver ? makingWords.overTitle : makingWords.outsideTitle}
        caution={asked && sayProblem(asked)}
        saveWord={isOver ? makingWords.keepOver : partWords.save}
        isStop={isOver}
        isOpen={asked !== undefined}
        onClose={save.forget}
        onSaid={(said) => void send(weighed, said)}
      />
    </>
  );
}

const NONE: readonly Problem[] = [];

/** The book has less of the lot than the scale: the tub is weighed, and the bench is come back to. */
const ToTheTub = ({ batchId, lotId }: { readonly batchId: string; readonly lotId: string | null }) => (
  <p>
    <LinkButton isBench to={`/shelf/lots/${lotId}/weigh?back=/making/${batchId}`}>
      {makingWords.weighTub}
    </LinkButton>
  </p>
);

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
