import { awayWords, sayTime } from '../../words/index.ts';
import { useStore } from '../api/use-store.ts';
import { useTimeZone } from '../api/use-time-zone.ts';
import { CLOCKS_DIFFER_MS, clockAhead } from '../away/clock.ts';
import { State } from '../parts/state.tsx';
import styles from './shell.module.css';

const { clock: words } = awayWords;
const MINUTE_MS = 60_000;

/** As people say it: minutes below two hours, hours below two days, then days. */
function sayLength(ms: number): string {
  const minutes = Math.round(ms / MINUTE_MS);
  if (minutes < 120) return words.minutes(minutes);
  return minutes < 2_880 ? words.hours(Math.round(minutes / 60)) : words.days(Math.round(minutes / 1_440));
}

/** What is entered before the workshop's clock is known carries this machine's own time: whoever enters knows where it differs. */
export function ClockBanner() {
  const ahead = useStore(clockAhead);
  const timeZone = useTimeZone();
  if (Math.abs(ahead) <= CLOCKS_DIFFER_MS) return null;
  const now = Date.now();
  const [here, there] = [now, now - ahead].map((at) => sayTime(new Date(at).toISOString(), timeZone));
  const say = ahead > 0 ? words.ahead : words.behind;
  return (
    <div className={styles.banner}>
      <p>
        <State kind="watch">{say(sayLength(Math.abs(ahead)), here ?? '', there ?? '')}</State>
      </p>
    </div>
  );
}
