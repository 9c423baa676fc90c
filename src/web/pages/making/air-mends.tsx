import { stepWords } from '../../../words/index.ts';
import styles from './step.module.css';

const { air: words } = stepWords;

/** What helps where there is too much air: it cannot be whipped out. */
export const AirMends = ({ title }: { readonly title: string }) => (
  <div className={styles.box}>
    <p>
      <strong>{title}</strong>
    </p>
    <ol className={styles.mends}>
      {words.mends.map((each) => (
        <li key={each}>{each}</li>
      ))}
    </ol>
    <p className="soft small">{words.mendSource}</p>
  </div>
);
