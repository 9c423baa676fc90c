import { sayDecimal, scentWords } from '../../../words/index.ts';
import styles from './blend-bar.module.css';

interface Part {
  readonly key: string;
  readonly name: string;
  /** Of one. */
  readonly share: number;
}

const percentOf = ({ share }: Part): string => `${sayDecimal((share * 100).toFixed(1))} %`;

/** What the scent is made of, side by side; told apart by pattern as well as tone, and written below. */
export const BlendBar = ({ parts }: { readonly parts: readonly Part[] }) => (
  <div
    className={styles.bar}
    role="img"
    aria-label={scentWords.picture(parts.map((part) => `${part.name} ${percentOf(part)}`).join(', '))}
  >
    {parts
      .filter(({ share }) => share > 0)
      .map((part, index) => (
        <span key={part.key} className={styles[`tone${index % 4}`]} style={{ flexGrow: part.share }}>
          {part.share > 0.15 ? part.name : ''}
        </span>
      ))}
  </div>
);
