import type { ReactNode } from 'react';
import { makingWords, sayGrams } from '../../../words/index.ts';
import { Moment } from '../../parts/moment.tsx';
import { Table } from '../../parts/table.tsx';
import type { Addition, Batch } from './batch.ts';
import { nameOf } from './name-of.ts';
import { sayEntered } from './step-done.tsx';

interface Row {
  readonly key: string;
  readonly name: string;
  readonly lot: string;
  readonly asked: string;
  readonly entered: ReactNode;
  readonly scale: string;
  readonly signed: { readonly by: string; readonly at: string } | null;
}

/** A row for each weighing, with the lot that it came of, what it was and what it stood on; a step is a row. */
export const RecordTable = ({ batch }: { readonly batch: Batch }) => (
  <Table
    caption={makingWords.record}
    isCaptionHidden
    rows={batch.screens.flatMap(rowsOf)}
    keyOf={({ key }) => key}
    columns={[
      { head: makingWords.material, cell: ({ name }) => name },
      { head: makingWords.lot, cell: ({ lot }) => lot, isCode: true },
      { head: makingWords.target, cell: ({ asked }) => asked, isNumber: true },
      { head: makingWords.onTheScale, cell: ({ entered }) => entered, isNumber: true },
      { head: makingWords.scale, cell: ({ scale }) => scale },
      {
        head: makingWords.by,
        cell: ({ signed }) =>
          signed && (
            <span className="small">
              {signed.by}, <Moment at={signed.at} />
            </span>
          ),
      },
    ]}
  />
);

function rowsOf(screen: Batch['screens'][number]): Row[] {
  if (screen.kind === 'addition') return weighingsOf(screen);
  const { done } = screen;
  const key = String(screen.screen);
  const entered = done && sayEntered(done);
  return [{ key, name: nameOf(screen), lot: '', asked: '', entered, scale: '', signed: done }];
}

/** Each weighing with what was asked then; each part has its own lot, and what went in instead its own name. */
function weighingsOf(screen: Addition): Row[] {
  const { entries, done } = screen;
  const first = { name: screen.itemName, asked: sayGrams(screen.targetGrams) };
  const key = String(screen.screen);
  if (entries.length === 0) {
    const entered = done ? sayGrams(done.actualGrams) : '';
    return [{ ...first, key, lot: done?.lotNumber ?? '', entered, scale: '', signed: done }];
  }
  return entries.map((entry) => ({
    key: entry.entryId,
    name: entry.substitute ?? screen.itemName,
    asked: sayGrams(entry.askedGrams),
    lot: entry.lotNumber,
    entered: sayGrams(entry.actualGrams),
    scale: entry.scaleName ?? '',
    signed: entry,
  }));
}
