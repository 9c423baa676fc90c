import type { ReactNode } from 'react';
import type { productFiles } from '../../../contract/index.ts';
import { productFileWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import styles from './product-files.module.css';
import { type SayWords, useSayWords } from './use-say-words.ts';

type Chapter = productFiles.Chapter;

interface Props {
  readonly chapter: Chapter;
  /** What may be done with it: files put under it. */
  readonly children?: ReactNode;
  /** Only where a heading can be there, missing or left to somebody. */
  readonly hasState?: boolean;
}

const KINDS = { there: 'ready', missing: 'watch', assessor: 'plain' } as const;

/** One heading of a document: what it says, its figures, what lies under it. */
export function ChapterCard({ chapter, children, hasState = false }: Props) {
  const say = useSayWords();
  const { source, state, says, cautions, entries, tables } = chapter;
  return (
    <Card
      title={say(chapter.title)}
      anchor={chapter.key}
      aside={hasState && <State kind={KINDS[state]}>{productFileWords.states[state]}</State>}
    >
      {source !== null && <p className="soft small">{say(source)}</p>}
      {says.map((words) => (
        <p key={say(words)} className={styles.written}>
          {say(words)}
        </p>
      ))}
      {cautions.map((words) => (
        <div key={say(words)}>
          <State kind="watch">{say(words)}</State>
        </div>
      ))}
      <Entries entries={entries} say={say} />
      {tables.map((table) => (
        <ChapterTable key={say(table.caption)} table={table} say={say} />
      ))}
      {children}
    </Card>
  );
}

const Entries = ({ entries, say }: { readonly entries: Chapter['entries']; readonly say: SayWords }) =>
  entries.length === 0 ? null : (
    <dl className={styles.entries}>
      {entries.map(({ label, text }) => (
        <div key={say(label)}>
          <dt className="soft">{say(label)}</dt>
          <dd>{say(text)}</dd>
        </div>
      ))}
    </dl>
  );

interface TableProps {
  readonly table: Chapter['tables'][number];
  readonly say: SayWords;
}

const ChapterTable = ({ table, say }: TableProps) => (
  <Table
    caption={say(table.caption)}
    rows={table.rows.map((cells, index) => ({ cells, key: String(index) }))}
    keyOf={({ key }) => key}
    columns={table.columns.map(({ title, isNumber }, place) => ({
      head: say(title),
      isNumber,
      cell: ({ cells }: { readonly cells: readonly productFiles.Words[] }) => say(cells[place] ?? ''),
    }))}
  />
);
