import type { productFiles } from '../../../contract/index.ts';
import { Card } from '../../parts/card.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import styles from './product-files.module.css';
import { type SayWords, useSayWords } from './use-say-words.ts';

type Chapter = productFiles.Chapter;

/** One heading of a document: what it says, its figures, what lies under it. */
export function ChapterCard({ chapter }: { readonly chapter: Chapter }) {
  const say = useSayWords();
  return (
    <Card title={say(chapter.title)} anchor={chapter.key}>
      <ChapterText chapter={chapter} />
    </Card>
  );
}

export function ChapterText({ chapter }: { readonly chapter: Chapter }) {
  const say = useSayWords();
  const { source, says, cautions, entries, tables } = chapter;
  return (
    <>
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
    </>
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
