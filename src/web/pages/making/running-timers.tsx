import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { stepWords } from '../../../words/index.ts';
import { listenForTap, ring } from './alarm.ts';
import type { Batch } from './batch.ts';
import { listTimers, type RunningTimer, sayClock } from './list-timers.ts';
import { markRung, ringDue, rungSoFar, silence } from './rings.ts';
import { SoundSwitch } from './sound-switch.tsx';
import styles from './step.module.css';
import { stillRunning } from './stood-marks.ts';
import { TimerRing } from './timer-ring.tsx';
import { useNow } from './use-now.ts';

interface Props {
  readonly batch: Batch;
  /** Where the bench stands: that screen shows its own time. */
  readonly shown: number;
  readonly onShow: (screen: number) => void;
}

/** What runs meanwhile: a hold while the next thing is weighed. It rings, says so, and leads to its screen. */
export function RunningTimers({ batch, shown, onShow }: Props) {
  const now = useNow();
  const timers = stillRunning(listTimers(batch.screens));
  useEffect(listenForTap, []);
  const said = useRings(timers, now);
  const elsewhere = timers.filter(({ screen }) => screen !== shown);
  return (
    <>
      <p role="status" className="visually-hidden">
        {said}
      </p>
      {elsewhere.length > 0 && (
        <nav aria-label={stepWords.timer.title}>
          <ul className={styles.strip}>
            {elsewhere.map((timer) => (
              <li key={timer.key}>
                <Chip
                  timer={timer}
                  now={now}
                  onShow={() => {
                    silence(timer.key);
                    onShow(timer.screen);
                  }}
                />
              </li>
            ))}
            <li>
              <SoundSwitch />
            </li>
          </ul>
        </nav>
      )}
    </>
  );
}

/** Rings what is due, once each; says it to those who listen. */
function useRings(timers: readonly RunningTimer[], now: number): string {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const due = timers.filter((timer) => ringDue(timer, now) > rungSoFar(timer.key));
    if (due.length === 0) return;
    for (const timer of due) markRung(timer.key, ringDue(timer, now));
    ring();
    setSaid(due.map((timer) => stepWords.timer.spoken(overWord(timer), timer.what)).join(' '));
  });
  return said;
}

/** Nothing that sets is over at its earliest hour: somebody feels it. */
const overWord = ({ latestAt }: RunningTimer): string =>
  latestAt === null ? stepWords.timer.over : stepWords.timer.mayBe;

interface ChipProps {
  readonly timer: RunningTimer;
  readonly now: number;
  readonly onShow: () => void;
}

function Chip({ timer, now, onShow }: ChipProps) {
  const { endsAt, begunAt, what } = timer;
  const left = endsAt === null ? null : endsAt - now;
  const isOver = left !== null && left <= 0;
  const time = left === null ? sayClock(Math.floor((now - begunAt) / 1000) * 1000) : sayClock(left);
  return (
    <Button
      className={isOver ? `${styles.chip} ${styles.over}` : (styles.chip ?? '')}
      aria-label={`${stepWords.timer.show(what)}: ${isOver ? overWord(timer) : time}`}
      onPress={onShow}
    >
      <TimerRing
        left={endsAt === null ? null : Math.max(0, (endsAt - now) / (endsAt - begunAt))}
        isOver={isOver}
        seconds={Math.floor((now - begunAt) / 1000)}
        isSmall
      />
      <span>
        <strong>{isOver ? overWord(timer) : time}</strong>
        <span className={styles.chipName}>{what}</span>
      </span>
    </Button>
  );
}
