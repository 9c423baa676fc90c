import { makingWords, partWords, weighInWords as words } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import type { Scale } from '../workshop/workshop.ts';
import type { Addition, Batch } from './batch.ts';
import { judgeScaleFor } from './judge-scale-for.ts';
import mishap from './mishap.module.css';
import type { WeighIn } from './use-weigh-in.ts';
import styles from './weigh-where.module.css';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly all: number;
  /** What it stands on; null: any. */
  readonly scaleName: string | null;
  /** Which tub: the planned one, until it ran out. */
  readonly lotNumber: string | null;
}

/** Which scale and which tub, as large as what is weighed: both are looked at before anything is poured. */
export function WeighWhere({ batch, screen, all, scaleName, lotNumber }: Props) {
  const before = batch.screens.findLast((one) => one.kind === 'addition' && one.screen < screen.screen);
  const last = before?.kind === 'addition' ? (before.entries.at(-1)?.scaleName ?? before.scaleName) : null;
  const isOther = scaleName !== null && last !== null && last !== scaleName;
  const isOtherLot = lotNumber !== screen.lotNumber;
  return (
    <div>
      <p className="soft">
        {makingWords.stepOf(screen.screen + 1, all)}. {screen.stage}.
      </p>
      <p className={styles.where}>
        <strong>{scaleName === null ? makingWords.anyScale : makingWords.onScale(scaleName)}</strong>
        <strong>{makingWords.lotLine(lotNumber ?? partWords.notKnown)}</strong>
      </p>
      {isOther && screen.done === null && <State kind="watch">{words.otherScaleNow(last)}</State>}
      {isOtherLot && screen.done === null && (
        <State kind="watch">{words.otherLotNow(screen.lotNumber ?? partWords.notKnown)}</State>
      )}
      {screen.lotNote && !isOtherLot && (
        <p className="soft">
          <Sentence saying={screen.lotNote} />
        </p>
      )}
    </div>
  );
}

/** It stands on another scale than planned: said in one tap, and what that scale is good for here. */
export function OtherScale({ weigh }: { readonly weigh: WeighIn }) {
  const { scales, scale } = weigh;
  if (scales.length === 0) return null;
  return (
    <Disclosure title={words.otherScale}>
      {() => (
        <div className={mishap.choices}>
          {scales.map((each) => (
            <Button
              key={each.id}
              isBench
              isAct={each.id === scale?.id}
              onPress={() => weigh.set('scaleId')(each.id)}
            >
              {words.scaleChoice(each.name, sayFit(each, weigh))}
            </Button>
          ))}
        </div>
      )}
    </Disclosure>
  );
}

/** What the scale that was chosen is not good for; nothing where it is good. */
export function ScaleFit({ weigh }: { readonly weigh: WeighIn }) {
  const { scale, planned } = weigh;
  if (scale === null || scale.id === planned?.id) return null;
  const fit = sayFit(scale, weigh);
  return fit === '' ? null : <State kind="watch">{words.scaleChoice(scale.name, fit)}</State>;
}

function sayFit(scale: Scale, { band }: WeighIn): string {
  const fit = judgeScaleFor(scale, band);
  if (fit.is === 'coarse') return words.scaleCoarse(fit.errorGrams);
  return fit.is === 'good' ? '' : words.scaleUnfit[fit.is](scale.capacityGrams);
}
