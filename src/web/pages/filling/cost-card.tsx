import { fillingWords, sayMoney } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Table } from '../../parts/table.tsx';
import { showAmount } from '../../show/show-amount.ts';

/** What a tin really cost, lot by lot. A price that nobody knows is named, never counted as nothing. */
export function CostCard({ runId }: { readonly runId: string }) {
  const read = useRead('getRunCost', { params: { id: runId } });
  return read.data ? <CostView cost={read.data} /> : null;
}

const captionOf = ({ shownTotal, perTin, currency, isComplete }: AnswerOf<'getRunCost'>): string =>
  [
    fillingWords.costTotal(sayMoney(shownTotal, currency), isComplete),
    ...(perTin === null ? [] : [fillingWords.perTin(sayMoney(perTin, currency), isComplete)]),
  ].join(' · ');

export const CostView = ({ cost }: { readonly cost: AnswerOf<'getRunCost'> }) => (
  <Card title={fillingWords.cost} aside={fillingWords.costIncludes} isFlush>
    <Table
      caption={captionOf(cost)}
      rows={cost.rows}
      keyOf={(row) => row.lotId}
      columns={[
        { head: fillingWords.makeOf, cell: (row) => `${row.itemName}, ${row.lotNumber}` },
        { head: fillingWords.amount, cell: (row) => showAmount(row.amount, row.unit), isNumber: true },
        {
          head: fillingWords.costs,
          cell: (row) =>
            row.shownCost === null ? fillingWords.noPrice : sayMoney(row.shownCost, cost.currency),
          isNumber: true,
        },
      ]}
    />
  </Card>
);
