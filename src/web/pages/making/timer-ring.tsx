import styles from './step.module.css';

interface Props {
  /** Share that is still to go, 0 to 1; null: it has no end. */
  readonly left: number | null;
  readonly isOver: boolean;
  /** Seconds that went by: the hand of what has no end. */
  readonly seconds: number;
  readonly isSmall?: boolean;
}

const RADIUS = 42;
const ROUND = 2 * Math.PI * RADIUS;

/** A ring that empties; a hand that goes round where nothing ends it; a bell when time is up. */
export const TimerRing = ({ left, isOver, seconds, isSmall = false }: Props) => (
  <svg viewBox="0 0 100 100" className={isSmall ? styles.small : styles.ring} aria-hidden="true">
    <circle className={styles.track} cx="50" cy="50" r={RADIUS} strokeWidth="10" />
    {left !== null && !isOver && (
      <circle
        className={styles.run}
        cx="50"
        cy="50"
        r={RADIUS}
        strokeWidth="10"
        strokeDasharray={`${ROUND * left} ${ROUND}`}
        transform="rotate(-90 50 50)"
      />
    )}
    {isOver && <circle className={styles.run} cx="50" cy="50" r={RADIUS} strokeWidth="10" />}
    {isOver && (
      <path
        className={styles.bell}
        d="M50 24c2.6 0 4.4 2 4.4 4.4C63 30.6 68 37.5 68 46v13l6 8v3H26v-3l6-8V46c0-8.5 5-15.4 13.600-17.600C45.600 26 47.400 24 50 24zM43 73h14a7 7 0 0 1-14 0z"
      />
    )}
    {left === null && (
      <line
        className={styles.hand}
        x1="50"
        y1="50"
        x2="50"
        y2="18"
        strokeWidth="5"
        strokeLinecap="round"
        transform={`rotate(${(seconds % 60) * 6} 50 50)`}
      />
    )}
  </svg>
);
