import { partWords, sayDateWithYear, shelfWords } from '../../../words/index.ts';
import { Table } from '../../parts/table.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { showAmount } from '../../show/show-amount.ts';
import { LotState } from './lot-state.tsx';
import type { Lot } from './shelf-item.ts';

const { lotTable: words } = shelfWords;

export const LotsTable = ({ lots }: { readonly lots: readonly Lot[] }) => (
  <Table
    caption={shelfWords.item.lotsTitle}
    isCaptionHidden
    rows={lots}
    keyOf={({ id }) => id}
    columns={[
      {
        head: words.number,
        cell: ({ id, number }) => <TextLink to={`/shelf/lots/${id}`}>{number}</TextLink>,
      },
      { head: words.onHand, cell: ({ onHand, unit }) => showAmount(onHand, unit), isNumber: true },
      {
        head: words.ends,
        cell: ({ bestBefore }) => (bestBefore === null ? partWords.notKnown : sayDateWithYear(bestBefore)),
      },
      { head: words.status, cell: (lot) => <LotState lot={lot} /> },
      { head: words.since, cell: ({ since }) => sayDateWithYear(since) },
      { head: words.supplierLot, cell: ({ supplierLot }) => supplierLot ?? partWords.notKnown },
    ]}
  />
);
