import type { AnswerOf } from '../api/shapes.ts';
import styles from './reach.module.css';

interface Props {
  readonly code: NonNullable<AnswerOf<'getReach'>['network']>['ways'][number]['code'];
  readonly label: string;
}

/** Black on white whatever the page looks like: cameras ask for it. */
export const SquareCode = ({ code, label }: Props) => (
  <svg
    className={styles.square}
    viewBox={`0 0 ${code.size} ${code.size}`}
    shapeRendering="crispEdges"
    role="img"
    aria-label={label}
  >
    <rect width={code.size} height={code.size} fill="#fff" />
    <path d={code.path} fill="#000" />
  </svg>
);
