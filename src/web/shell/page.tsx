import type { ReactNode } from 'react';
import styles from './page.module.css';
import { PageHeading } from './page-heading.tsx';

interface Props {
  /** The browser's title and, where there is no sentence, the heading. */
  readonly title: string;
  /** The answer in one sentence. */
  readonly says?: ReactNode;
  /** Above the answer, quietly: where we are. */
  readonly above?: ReactNode;
  /** Below the answer, quietly: the day, what was counted. */
  readonly soft?: ReactNode;
  /** The means to act. */
  readonly actions?: ReactNode;
  /** Pages of text and forms are easier to read when narrow. */
  readonly isNarrow?: boolean;
  readonly children?: ReactNode;
}

/** A page: the answer first, then the means to act, then the figures. */
export const Page = ({ title, says, above, soft, actions, isNarrow = false, children }: Props) => (
  <div className={isNarrow ? `${styles.page} ${styles.narrow}` : styles.page}>
    <div className={styles.lead}>
      <div className={styles.words}>
        {above && <div className="soft">{above}</div>}
        <PageHeading title={title}>{says ?? title}</PageHeading>
        {soft && <div className={`soft ${styles.softText}`}>{soft}</div>}
      </div>
      {actions && <div className={styles.actions}>{actions}</div>}
    </div>
    {children}
  </div>
);
