import { type ReactNode, useEffect } from 'react';
import styles from './card.module.css';
import { KeepNumbers } from './keep-numbers.tsx';
import { useAnchor } from './use-anchor.ts';

interface Props {
  readonly title: string;
  readonly aside?: ReactNode;
  /** What follows # in an address that leads to it, and opens it. */
  readonly anchor: string;
  readonly isOpen: boolean;
  readonly onToggle: (isOpen: boolean) => void;
  readonly children: ReactNode;
}

/** A card that folds. What is folded stays on the page: the browser finds words in it, and paper shows all of it. */
export function FoldedCard({ title, aside, anchor, isOpen, onToggle, children }: Props) {
  const place = useAnchor<HTMLDetailsElement>(anchor);
  useEffect(() => {
    let isForPaper = false;
    const unfold = () => {
      const card = place.current;
      isForPaper = card !== null && !card.open;
      if (card && isForPaper) card.open = true;
    };
    const foldAgain = () => {
      if (place.current && isForPaper) place.current.open = false;
    };
    window.addEventListener('beforeprint', unfold);
    window.addEventListener('afterprint', foldAgain);
    return () => {
      window.removeEventListener('beforeprint', unfold);
      window.removeEventListener('afterprint', foldAgain);
    };
  }, [place]);
  return (
    <details
      className={`${styles.card} ${styles.folded}`}
      ref={place}
      id={anchor}
      tabIndex={-1}
      open={isOpen}
      onToggle={(event) => onToggle(event.currentTarget.open)}
    >
      <summary className={styles.summary}>
        <h2>
          <KeepNumbers>{title}</KeepNumbers>
        </h2>
        {aside && <span>{aside}</span>}
      </summary>
      <div className={styles.body}>{children}</div>
    </details>
  );
}
