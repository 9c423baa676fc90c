import styles from './step.module.css';

interface Props {
  /** How far the tin is full at its aim: 1 is up to where the lid needs room. */
  readonly fullness: number;
  readonly headspaceShare: number;
  readonly verdict: 'more' | 'stop' | 'too-much';
}

const [LEFT, WIDE, TOP, DEEP] = [8, 84, 22, 62];

/** A tin cut open, filled to its aim: with room, just full, or heaped above the rim. */
export function TinPicture({ fullness, headspaceShare, verdict }: Props) {
  const usable = DEEP * (1 - headspaceShare);
  const level = TOP + DEEP - usable * Math.min(fullness, 1);
  const heap = Math.min(20, usable * Math.max(0, fullness - 1));
  return (
    <svg viewBox="0 0 100 92" className={styles.picture} aria-hidden="true">
      <rect
        className={verdict === 'too-much' ? styles.butterWrong : styles.butter}
        x={LEFT}
        y={level}
        width={WIDE}
        height={TOP + DEEP - level}
      />
      {heap > 0.5 && (
        <path
          className={styles.butterWrong}
          d={`M${LEFT} ${level}Q${LEFT + WIDE / 2} ${level - 2 * heap} ${LEFT + WIDE} ${level}Z`}
        />
      )}
      <path
        className={styles.tinWall}
        d={`M${LEFT} ${TOP}V${TOP + DEEP}H${LEFT + WIDE}V${TOP}`}
        strokeWidth="4"
      />
      {headspaceShare > 0 && (
        <line
          className={styles.tinLine}
          x1={LEFT}
          x2={LEFT + WIDE}
          y1={TOP + DEEP - usable}
          y2={TOP + DEEP - usable}
          strokeWidth="1.5"
          strokeDasharray="4 3"
        />
      )}
    </svg>
  );
}
