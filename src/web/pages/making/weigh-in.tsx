import { type ReactNode, useState } from 'react';
import {
  makingWords,
  partWords,
  sayDecimal,
  sayProblem,
  scaleWords,
  weighInWords as words,
} from '../../../words/index.ts';
import type { BenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { Form } from '../../parts/form.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { ScaleCheckCard } from '../scales/scale-check-card.tsx';
import type { Addition, Batch } from './batch.ts';
import styles from './bench.module.css';
import { DeviationDialog } from './deviation-dialog.tsx';
import { Dock } from './dock.tsx';
import { EntriesSoFar } from './entries-so-far.tsx';
import mishap from './mishap.module.css';
import type { MishapView } from './mishap-menu.tsx';
import { OffTargetDialog } from './off-target-dialog.tsx';
import { OtherLot } from './other-lot.tsx';
import { ReadingDialog } from './reading-dialog.tsx';
import { ScaleField } from './scale-field.tsx';
import { SpiltSoFar } from './spilt-so-far.tsx';
import { StruckEntries } from './struck-entries.tsx';
import type { WeighIn as Weigh } from './use-weigh-in.ts';
import { VesselFields, VesselSwitch } from './vessel-fields.tsx';
import { bandLeft } from './weigh-band.ts';
import { OtherScale, ScaleFit } from './weigh-where.tsx';
import { WeightBand } from './weight-band.tsx';
import { WorstNote } from './worst-note.tsx';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly weigh: Weigh;
  readonly doneWord: string;
  /** Which step it is, on which scale, of which lot. */
  readonly where: ReactNode;
  readonly onMishap: (view: MishapView) => void;
  readonly resize: BenchWrite<'resizeBatch'>;
}

/** One weighing: the target in large digits, what the scale shows, whether it lies in the band. */
export function WeighIn({ batch, screen, weigh, doneWord, where, onMishap, resize }: Props) {
  const { draft, set, save, isVessel } = weigh;
  const band = bandLeft(screen);
  /** The keys type into the field that was tapped last. */
  const [typing, setTyping] = useState<'grams' | 'tare'>('grams');
  const field = isVessel ? typing : 'grams';
  return (
    <>
      <CheckFirst weigh={weigh} />
      <Form label={screen.itemName} problems={weigh.problems} onSubmit={() => weigh.enter()} isSaidWithin>
        <div className={styles.screen}>
          {where}
          {screen.caution !== '' && <p className={styles.caution}>{screen.caution}</p>}
          {[screen.warning, screen.shareNow].map(
            (saying) =>
              saying && (
                <p key={saying.code} className={styles.caution}>
                  <Sentence saying={saying} />
                </p>
              ),
          )}
          <span className={mishap.onNarrow}>
            <WorstNote screen={screen} net={weigh.net} />
          </span>
          <EntriesSoFar batch={batch} screen={screen} />
          <Dock
            wayOut={(found) =>
              found.code === 'lot-too-small' && <ToTheTub batchId={batch.id} lotId={weigh.lotId} />
            }
          >
            {isVessel && <VesselFields weigh={weigh} onTouch={() => setTyping('tare')} />}
            <div className={styles.figures}>
              <div>
                <p className="soft">{screen.entries.length > 0 ? words.weighRest : makingWords.weighOut}</p>
                <p className={styles.digits}>
                  {sayDecimal(band.targetGrams)}
                  <small>g</small>
                </p>
              </div>
              <ScaleField
                label={isVessel ? words.gross : makingWords.gramsIn}
                where="actualGrams"
                value={draft.grams}
                onChange={set('grams')}
                onTouch={() => setTyping('grams')}
                isBusy={save.isBusy}
              />
            </div>
            <ScaleFit weigh={weigh} />
            {weigh.isVesselHeavier && <State kind="stop">{words.vesselHeavier}</State>}
            <WeightBand typed={weigh.isVesselHeavier ? '' : weigh.net} band={band} />
            <span className={mishap.onWide}>
              <WorstNote screen={screen} net={weigh.net} />
            </span>
            <KeyPad value={draft[field]} onChange={set(field)} isBusy={save.isBusy} />
            <div className={styles.acts}>
              <span className={mishap.onWide}>
                <Button isBench onPress={() => onMishap('menu')}>
                  {words.menu}
                </Button>
              </span>
              <Button type="submit" isAct isBench isWide isBusy={save.isBusy} isDisabled={draft.grams === ''}>
                {doneWord}
              </Button>
            </div>
          </Dock>
          <span className={mishap.onNarrow}>
            <Button isBench isWide onPress={() => onMishap('menu')}>
              {words.menu}
            </Button>
          </span>
          <VesselSwitch weigh={weigh} />
          <OtherScale weigh={weigh} />
          <OtherLot screen={screen} lotId={weigh.lotId} onChange={set('lotId')} />
          <SpiltSoFar batch={batch} screen={screen.screen} />
          <StruckEntries batch={batch} screen={screen.screen} />
        </div>
      </Form>
      <ReadingDialog weigh={weigh} />
      <AskedDialog batch={batch} screen={screen} weigh={weigh} onMishap={onMishap} resize={resize} />
    </>
  );
}

/** Before the first weighing of the day: the scale shows its check weight. Its form stands outside of this one. */
function CheckFirst({ weigh: { planned, scale } }: { readonly weigh: Weigh }) {
  const isDue = planned?.check?.isDue ?? false;
  // What was due while this screen is shown stays on it: how the check went is read here.
  const [wasDue, setWasDue] = useState(isDue);
  if (isDue && !wasDue) setWasDue(true);
  if (!planned || !wasDue) return null;
  return (
    <div className={isDue ? `${styles.caution} ${styles.first}` : undefined}>
      {planned.check?.isHeld && <p>{scaleWords.bench.held(planned.name, scale?.name ?? null)}</p>}
      <Disclosure
        isBench
        title={isDue ? words.checkFirst(planned.name) : scaleWords.check.title(planned.name)}
      >
        {() => <ScaleCheckCard scaleId={planned.id} />}
      </Disclosure>
    </div>
  );
}

interface AskedProps {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly weigh: Weigh;
  readonly onMishap: (view: MishapView) => void;
  readonly resize: BenchWrite<'resizeBatch'>;
}

/** What the workshop asked back: off target with its ways on, anything else with what and why. */
function AskedDialog({ batch, screen, weigh, onMishap, resize }: AskedProps) {
  const [isKept, setKept] = useState(false);
  const { asked } = weigh;
  if (asked === null) return null;
  const isOver = asked.problem.code === 'weighed-over-limits';
  const isOff = isOver || asked.problem.code === 'weight-outside-band';
  function leave(): void {
    setKept(false);
    weigh.forgetAsked();
  }
  if (isOff && !isKept)
    return (
      <OffTargetDialog
        batch={batch}
        screen={screen}
        weigh={weigh}
        asked={asked}
        resize={resize}
        onNotResized={() => onMishap('too-much')}
        onKeep={() => setKept(true)}
        onLotEmpty={() => {
          leave();
          onMishap('lot-empty');
        }}
      />
    );
  return (
    <DeviationDialog
      title={isOver ? makingWords.overTitle : makingWords.outsideTitle}
      caution={sayProblem(asked.problem)}
      saveWord={isOver ? makingWords.keepOver : partWords.save}
      isStop={isOver}
      isOpen
      onClose={leave}
      onSaid={(deviation) => {
        setKept(false);
        const isHeld = asked.problem.code === 'scale-held';
        const said = isHeld ? { ...asked.said, isScaleHeldKnown: true } : asked.said;
        void weigh.send(said, { deviation, isOverKnown: isOver });
      }}
    />
  );
}

/** The book has less of the lot than the scale: the tub is weighed, and the bench is come back to. */
const ToTheTub = ({ batchId, lotId }: { readonly batchId: string; readonly lotId: string }) => (
  <p>
    <LinkButton isBench to={`/shelf/lots/${lotId}/weigh?back=/making/${batchId}`}>
      {makingWords.weighTub}
    </LinkButton>
  </p>
);
