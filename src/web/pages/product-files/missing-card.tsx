import { Link } from '@tanstack/react-router';
import type { productFiles } from '../../../contract/index.ts';
import { productFileWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { State } from '../../parts/state.tsx';
import styles from './product-files.module.css';
import { useSayWords } from './use-say-words.ts';

/** What is missing, each with the way to where it is mended. */
export function MissingCard({ missing }: { readonly missing: readonly productFiles.Gap[] }) {
  const say = useSayWords();
  return (
    <Card title={productFileWords.missing} isFlush={missing.length > 0}>
      {missing.length === 0 ? (
        <State kind="ready">{productFileWords.missingNone}</State>
      ) : (
        <List rows={missing} keyOf={({ says }) => JSON.stringify(says)} empty="">
          {({ says, to, hash }) => (
            <div className={styles.gap}>
              <State kind="watch">{say(says)}</State>
              <Link to={to} {...(hash !== null && { hash })} aria-label={productFileWords.mendOf(say(says))}>
                {productFileWords.mend}
              </Link>
            </div>
          )}
        </List>
      )}
    </Card>
  );
}
