import { exact, toText } from '../../../core/quantity/index.ts';
import { makingWords, sayGrams, sayNumber } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import styles from './plan.module.css';

type Row = AnswerOf<'planBatch'>['rows'][number];

/** The weighing sheet: what the scale can show, and how far off that may be. */
export const SheetTable = ({ rows }: { readonly rows: readonly Row[] }) => (
  <>
    <Table
      caption={makingWords.sheet}
      isCaptionHidden
      rows={rows}
      keyOf={(row) => String(row.position)}
      columns={[
        { head: makingWords.material, cell: (row) => <What row={row} /> },
        { head: makingWords.lot, cell: (row) => row.lotNumber ?? makingWords.noLot, isCode: true },
        {
          head: makingWords.target,
          cell: (row) => <strong>{sayGrams(row.targetGrams)}</strong>,
          isNumber: true,
        },
        { head: makingWords.band, cell: (row) => `${row.lowGrams} – ${row.highGrams}`, isNumber: true },
        { head: makingWords.scale, cell: (row) => row.scaleName ?? makingWords.noScale },
        {
          head: makingWords.error,
          cell: (row) => (row.relativeError === null ? '' : `${sayNumber(row.relativeError * 100, 2)} %`),
          isNumber: true,
        },
      ]}
    />
    {rows.length > 1 && (
      <p className={`soft ${styles.total}`}>{makingWords.sheetSum(sayGrams(sumOf(rows)))}</p>
    )}
  </>
);

const sumOf = (rows: readonly Row[]): string =>
  toText(rows.reduce((sum, { targetGrams }) => sum.plus(targetGrams), exact(0)));

const What = ({ row }: { readonly row: Row }) => (
  <>
    <strong>{row.itemName}</strong> <span className="soft small">{row.stage}</span>
    {row.lotNote && (
      <>
        <br />
        <span className="soft small">
          <Sentence saying={row.lotNote} />
        </span>
      </>
    )}
    {row.warning && (
      <>
        <br />
        <State kind="watch">
          <Sentence saying={row.warning} />
        </State>
      </>
    )}
  </>
);
