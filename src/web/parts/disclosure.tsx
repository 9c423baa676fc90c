import { type ReactNode, useState } from 'react';
import styles from './disclosure.module.css';

interface Props {
  readonly title: string;
  /** Drawn only once it is opened. */
  readonly children: () => ReactNode;
  /** 64 px, for a greasy knuckle. */
  readonly isBench?: boolean;
}

/** More for those who want it. */
export function Disclosure({ title, children, isBench = false }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className={styles.disclosure} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className={isBench ? `${styles.summary} ${styles.bench}` : styles.summary}>{title}</summary>
      {isOpen && <div className={styles.inside}>{children()}</div>}
    </details>
  );
}
