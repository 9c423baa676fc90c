import { weighInWords as words } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import styles from './mishap.module.css';
import type { WeighIn } from './use-weigh-in.ts';

/** A tared scale shows net; in a vessel its tare is taken off, as last time in one tap. */
export function VesselFields({ weigh }: { readonly weigh: WeighIn }) {
  const { draft, set, isVessel, lastTare } = weigh;
  return (
    <div className={styles.modes}>
      <Button isBench onPress={() => set('isVessel')(isVessel ? '' : 'yes')}>
        {isVessel ? words.tared : words.inVessel}
      </Button>
      {isVessel && (
        <label>
          <span className="soft">{words.tare}</span>{' '}
          <input
            inputMode="decimal"
            autoComplete="off"
            aria-label={words.tare}
            value={draft.tare}
            onChange={(event) => set('tare')(event.target.value)}
          />
        </label>
      )}
      {isVessel && lastTare !== null && draft.tare === '' && (
        <Button isBench onPress={() => set('tare')(lastTare)}>
          {words.lastTare(lastTare)}
        </Button>
      )}
      {isVessel && draft.grams !== '' && <output aria-live="polite">{words.net(weigh.net)}</output>}
    </div>
  );
}
