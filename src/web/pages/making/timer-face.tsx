import { stepWords } from '../../../words/index.ts';
import { Moment } from '../../parts/moment.tsx';
import { type RunningTimer, sayClock } from './list-timers.ts';
import { SettingRange } from './setting-range.tsx';
import { SoundSwitch } from './sound-switch.tsx';
import styles from './step.module.css';
import { TimerRing } from './timer-ring.tsx';
import { useNow } from './use-now.ts';

const { timer: words } = stepWords;
const wholeSeconds = (ms: number): number => Math.floor(Math.max(0, ms) / 1000);

/** The time of a step, in digits that are read from two metres; the end by picture and word too. */
export function TimerFace({ timer }: { readonly timer: RunningTimer }) {
  const now = useNow();
  if (timer.latestAt !== null && timer.endsAt !== null)
    return <SettingRange begunAt={timer.begunAt} from={timer.endsAt} to={timer.latestAt} now={now} />;
  const gone = now - timer.begunAt;
  const left = timer.endsAt === null ? null : timer.endsAt - now;
  const isOver = left !== null && left <= 0;
  return (
    <div className={isOver ? `${styles.face} ${styles.over}` : styles.face}>
      <TimerRing
        left={
          timer.endsAt === null ? null : Math.max(0, (timer.endsAt - now) / (timer.endsAt - timer.begunAt))
        }
        isOver={isOver}
        seconds={wholeSeconds(gone)}
      />
      <div>
        <p className={styles.clock} role="timer" aria-label={timer.what}>
          {left === null ? sayClock(wholeSeconds(gone) * 1000) : sayClock(left)}
        </p>
        <p className={styles.word}>{left === null ? words.elapsed : isOver ? words.over : words.left}</p>
        {isOver && left !== null && (
          <p className="soft">{words.overSince(sayClock(wholeSeconds(-left) * 1000))}</p>
        )}
        <p className="soft">
          {stepWords.begunBy(timer.begunBy)}, <Moment at={new Date(timer.begunAt).toISOString()} />
        </p>
        {timer.endsAt !== null && <SoundSwitch />}
      </div>
    </div>
  );
}
