import { sayInstant, stepWords } from '../../../words/index.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { State } from '../../parts/state.tsx';
import styles from './step.module.css';

interface Props {
  readonly begunAt: number;
  readonly from: number;
  readonly to: number;
  readonly now: number;
}

const { timer: words } = stepWords;
const [WIDE, TOP, HIGH] = [1000, 14, 40];

/** From now to firm: nobody knows the hour, so a range is drawn, with a hand where the time stands. */
export function SettingRange({ begunAt, from, to, now }: Props) {
  const zone = useTimeZone();
  const say = (at: number) => sayInstant(new Date(at).toISOString(), zone);
  const end = begunAt + (to - begunAt) * 1.08;
  const x = (at: number) => (WIDE * (Math.min(Math.max(at, begunAt), end) - begunAt)) / (end - begunAt);
  const [kind, word] =
    now < from
      ? (['going', words.waits(say(from))] as const)
      : now < to
        ? (['watch', words.mayBe] as const)
        : (['ready', words.shouldBe] as const);
  return (
    <div className={styles.box}>
      <p className={styles.word}>
        <State kind={kind}>{word}</State>
      </p>
      <div className={styles.range}>
        <svg
          viewBox={`0 0 ${WIDE} 74`}
          preserveAspectRatio="none"
          className={styles.scale}
          aria-hidden="true"
        >
          <rect className={styles.wait} x="0" y={TOP} width={WIDE} height={HIGH} />
          <rect
            className={styles.may}
            x={x(from)}
            y={TOP}
            width={Math.max(4, x(to) - x(from))}
            height={HIGH}
            strokeWidth="2"
          />
          <line className={styles.hand} x1={x(now)} x2={x(now)} y1="4" y2="66" strokeWidth="6" />
        </svg>
        <div className={styles.rangeMarks}>
          <p>
            <span className="soft">{words.from}</span> <strong>{say(from)}</strong>
          </p>
          <p>
            <span className="soft">{words.to}</span> <strong>{say(to)}</strong>
          </p>
        </div>
      </div>
    </div>
  );
}
