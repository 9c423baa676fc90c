import { shelfWords, termWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { Page } from '../../shell/page.tsx';
import styles from './shelf.module.css';
import type { ShelfItem } from './shelf-item.ts';
import { ShelfNav } from './shelf-nav.tsx';
import { ShelfTub } from './shelf-tub.tsx';

export const ShelfPage = () => (
  <Loaded read={useRead('getShelf')} title={shelfWords.title}>
    {(shelf) => <ShelfView shelf={shelf} />}
  </Loaded>
);

const GROUPS = ['ingredient', 'base', 'product', 'packaging'] as const;

function ShelfView({ shelf }: { readonly shelf: AnswerOf<'getShelf'> }) {
  return (
    <Page
      title={shelfWords.title}
      says={<Sentence saying={shelf.sentence} />}
      soft={shelfWords.soft}
      actions={
        <>
          <LinkButton to="/shelf/weigh">{shelfWords.weigh}</LinkButton>
          <LinkButton to="/shelf/receive" isAct>
            {shelfWords.receive}
          </LinkButton>
        </>
      }
    >
      <ShelfNav />
      {shelf.items.length === 0 && <p>{shelfWords.nothing}</p>}
      {GROUPS.map((group) => (
        <ShelfBoard
          key={group}
          title={termWords.group[group]}
          items={shelf.items.filter((item) => item.group === group)}
        />
      ))}
    </Page>
  );
}

function ShelfBoard({ title, items }: { readonly title: string; readonly items: readonly ShelfItem[] }) {
  if (items.length === 0) return null;
  return (
    <section className={styles.section} aria-label={title}>
      <h2>{title}</h2>
      <ul className={styles.board}>
        {items.map((item) => (
          <ShelfTub key={item.itemId} item={item} />
        ))}
      </ul>
    </section>
  );
}
