import { sayDecimal, sayGrams, shelfWords, termWords } from '../../../words/index.ts';
import { Moment } from '../../parts/moment.tsx';
import { Table } from '../../parts/table.tsx';
import type { LotDetail } from './shelf-item.ts';

const { lot: words } = shelfWords;

type Movement = LotDetail['movements'][number];

/** What is on the books, to the last decimal. */
function changeInWords({ change, unit }: Movement): string {
  const signed = change.startsWith('-') ? change : `+${change}`;
  return unit === 'g' ? sayGrams(signed) : sayDecimal(signed);
}

export const LotMovements = ({ movements }: { readonly movements: LotDetail['movements'] }) =>
  movements.length === 0 ? (
    <p className="soft">{words.noMovements}</p>
  ) : (
    <Table
      caption={words.movements}
      isCaptionHidden
      rows={movements}
      keyOf={({ id }) => id}
      columns={[
        { head: words.movement, cell: ({ kind }) => termWords.movement[kind] },
        { head: words.change, cell: changeInWords, isNumber: true },
        { head: words.place, cell: ({ place }) => place },
        { head: words.at, cell: ({ at }) => <Moment at={at} /> },
        { head: words.by, cell: ({ by }) => by },
        {
          head: words.reason,
          cell: ({ reason, about }) => [reason, about].filter((text) => text !== '').join('; '),
        },
      ]}
    />
  );
