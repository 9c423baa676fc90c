import { type ReactNode, useId } from 'react';
import styles from './card.module.css';
import { KeepNumbers } from './keep-numbers.tsx';
import { useAnchor } from './use-anchor.ts';

interface Props {
  readonly title?: ReactNode;
  /** Right of the title, quietly: how many of how many. */
  readonly aside?: ReactNode;
  /** What follows # in an address that leads to it. */
  readonly anchor?: string;
  /** Lists draw their own edges. */
  readonly isFlush?: boolean;
  readonly children: ReactNode;
}

export function Card({ title, aside, anchor, isFlush = false, children }: Props) {
  const id = useId();
  const place = useAnchor(anchor);
  return (
    <section
      className={styles.card}
      aria-labelledby={title ? id : undefined}
      ref={place}
      id={anchor}
      tabIndex={anchor === undefined ? undefined : -1}
    >
      {title && (
        <div className={styles.head}>
          <h2 id={id}>
            <KeepNumbers>{title}</KeepNumbers>
          </h2>
          {aside && <span className="soft">{aside}</span>}
        </div>
      )}
      {isFlush ? children : <div className={styles.body}>{children}</div>}
    </section>
  );
}
