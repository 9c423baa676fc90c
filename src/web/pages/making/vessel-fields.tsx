import { weighInWords as words } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import styles from './bench.module.css';
import mishap from './mishap.module.css';
import type { WeighIn } from './use-weigh-in.ts';

/** A tared scale shows net; in a vessel its empty weight is taken off, as last time in one tap. */
export const VesselSwitch = ({ weigh: { set, isVessel } }: { readonly weigh: WeighIn }) => (
  <div className={mishap.modes}>
    <Button isBench onPress={() => set('isVessel')(isVessel ? '' : 'yes')}>
      {isVessel ? words.tared : words.inVessel}
    </Button>
  </div>
);

interface Props {
  readonly weigh: WeighIn;
  /** The keys type into it. */
  readonly onTouch: () => void;
}

/** The vessel is weighed first, and net is the figure that counts: both stand above what the scale shows with it. */
export function VesselFields({ weigh, onTouch }: Props) {
  const { draft, set, lastTare, isVesselHeavier } = weigh;
  return (
    <>
      <div className={styles.figures}>
        <label>
          <span className="soft">{words.tare}</span>
          <span className={styles.second}>
            <input
              inputMode="none"
              autoComplete="off"
              aria-label={words.tare}
              value={draft.tare}
              onFocus={onTouch}
              onChange={(event) => set('tare')(event.target.value)}
            />
          </span>
        </label>
        <output aria-live="polite">
          <span className="soft">{words.netTitle}</span>
          <span className={styles.second}>
            {draft.grams === '' || isVesselHeavier ? '' : words.netFigure(weigh.net)}
          </span>
        </output>
      </div>
      {lastTare !== null && draft.tare === '' && (
        <Button isBench onPress={() => set('tare')(lastTare)}>
          {words.lastTare(lastTare)}
        </Button>
      )}
    </>
  );
}
