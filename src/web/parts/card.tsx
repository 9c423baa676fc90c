import { type ReactNode, useId } from 'react';
import styles from './card.module.css';

interface Props {
  readonly title?: ReactNode;
  /** Right of the title, quietly: how many of how many. */
  readonly aside?: ReactNode;
  /** Lists draw their own edges. */
  readonly isFlush?: boolean;
  readonly children: ReactNode;
}

export function Card({ title, aside, isFlush = false, children }: Props) {
  const id = useId();
  return (
    <section className={styles.card} aria-labelledby={title ? id : undefined}>
      {title && (
        <div className={styles.head}>
          <h2 id={id}>{title}</h2>
          {aside && <span className="soft">{aside}</span>}
        </div>
      )}
      {isFlush ? children : <div className={styles.body}>{children}</div>}
    </section>
  );
}
