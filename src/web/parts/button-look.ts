import styles from './button.module.css';

export interface ButtonLook {
  /** The one green for acting: at most one a list or form. */
  readonly isAct?: boolean;
  /** Ends or throws away something. */
  readonly isStop?: boolean;
  /** 64 px, for a greasy knuckle. */
  readonly isBench?: boolean;
  readonly isWide?: boolean;
  /** Looks like a link: for the quiet things. */
  readonly isPlain?: boolean;
  /** Sent and not answered yet. */
  readonly isBusy?: boolean;
}

export const buttonClass = ({ isAct, isStop, isBench, isWide, isPlain, isBusy }: ButtonLook): string =>
  [
    styles.button,
    isAct && styles.act,
    isStop && styles.stop,
    isBench && styles.bench,
    isWide && styles.wide,
    isPlain && styles.plain,
    isBusy && styles.busy,
  ]
    .filter(Boolean)
    .join(' ');
