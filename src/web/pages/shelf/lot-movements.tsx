import { shelfWords, termWords } from '../../../words/index.ts';
import { Moment } from '../../parts/moment.tsx';
import { Table } from '../../parts/table.tsx';
import { showAmount } from '../../show/show-amount.ts';
import type { LotDetail } from './shelf-item.ts';

const { lot: words } = shelfWords;

const signed = (change: string): string => (change.startsWith('-') ? change : `+${change}`);

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
        { head: words.change, cell: ({ change, unit }) => showAmount(signed(change), unit), isNumber: true },
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
