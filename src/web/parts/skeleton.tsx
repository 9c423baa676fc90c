import { useEffect, useState } from 'react';
import { shellWords } from '../../words/index.ts';
import styles from './skeleton.module.css';

/** Below this a flicker disturbs more than it tells (common practice, no source). */
const WAIT_MS = 150;

/** Grey shapes where the page will stand, once fetching takes noticeably long. */
export function Skeleton() {
  const [isSlow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), WAIT_MS);
    return () => clearTimeout(timer);
  }, []);
  return (
    <div role="status" data-loading>
      {isSlow && (
        <div className={styles.skeleton}>
          <span className="visually-hidden">{shellWords.loading}</span>
          <div className={styles.line} />
          <div className={styles.shortLine} />
          <div className={styles.block} />
        </div>
      )}
    </div>
  );
}
