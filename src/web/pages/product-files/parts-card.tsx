import { Link } from '@tanstack/react-router';
import type { productFiles } from '../../../contract/index.ts';
import { productFileWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { ChapterState } from './chapter-state.tsx';
import styles from './product-files.module.css';
import { useSayWords } from './use-say-words.ts';

interface Props {
  readonly chapters: readonly productFiles.Chapter[];
  readonly areAllOpen: boolean;
  readonly onOpenAll: (areOpen: boolean) => void;
}

const { parts: words } = productFileWords;

/** The list of contents: each part with its state, and the way to it. */
export function PartsCard({ chapters, areAllOpen, onOpenAll }: Props) {
  const say = useSayWords();
  return (
    <Card title={words.title} isFlush>
      <nav aria-label={words.title}>
        <ol className={styles.parts}>
          {chapters.map((chapter) => (
            <li key={chapter.key} className={chapter.level === 2 ? styles.under : undefined}>
              <Link to="." hash={chapter.key} className={styles.toPart}>
                {say(chapter.title)}
              </Link>
              <ChapterState chapter={chapter} />
            </li>
          ))}
        </ol>
      </nav>
      <p className={styles.foot}>
        <Button onPress={() => onOpenAll(!areAllOpen)}>{areAllOpen ? words.foldAll : words.openAll}</Button>
      </p>
    </Card>
  );
}
