import { Link, useParams } from '@tanstack/react-router';
import { complaintWords, partWords, sayDate, traceWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Figures } from '../../parts/figures.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { ShowWorking } from '../../parts/show-working.tsx';
import { State } from '../../parts/state.tsx';
import { type Column, Table } from '../../parts/table.tsx';
import { Page } from '../../shell/page.tsx';
import { showAmount } from '../../show/show-amount.ts';
import { RunAnswers } from '../answers/answers-card.tsx';
import { CostView } from '../filling/cost-card.tsx';

type Trace = AnswerOf<'traceLot'>;
type Lot = Trace['wentInto'][number]['lot'];

export function LotTracePage() {
  const { id } = useParams({ from: '/trace/$id' });
  return (
    <Loaded read={useRead('traceLot', { params: { id } })} title={traceWords.title}>
      {(trace) => <TraceView trace={trace} />}
    </Loaded>
  );
}

const LotLink = ({ lot }: { readonly lot: Lot }) => (
  <Link to="/trace/$id" params={{ id: lot.id }}>
    {lot.number}
  </Link>
);

const TraceView = ({ trace }: { readonly trace: Trace }) => (
  <Page
    title={traceWords.titleOf(trace.lot.number)}
    says={<Sentence saying={trace.sentence} />}
    above={`${trace.lot.number} ${trace.lot.itemName}`}
    actions={
      trace.lot.itemKind === 'product' && (
        <LinkButton to={`/complaints/new?product=${trace.lot.itemId}&run=${trace.lot.fillingRunId}`}>
          {complaintWords.add}
        </LinkButton>
      )
    }
  >
    <Figures>
      <Figure label={traceWords.sent} value={trace.unitsSent} />
      <Figure label={traceWords.onHand} value={trace.unitsOnHand} />
    </Figures>
    <OrderTable trace={trace} />
    <LotTable title={traceWords.wentInto} none={traceWords.wentIntoNone} rows={trace.wentInto} />
    <LotTable
      title={traceWords.madeOf}
      aside={traceWords.madeOfAside}
      none={traceWords.madeOfNone}
      rows={trace.madeOf}
    />
    {trace.lot.fillingRunId !== null && <RunAnswers runId={trace.lot.fillingRunId} />}
    {trace.balance && <Balance balance={trace.balance} />}
    {trace.cost && <CostView cost={trace.cost} />}
  </Page>
);

interface LotRow {
  readonly lot: Lot;
  readonly depth: number;
  /** How much of it is in there; null where nobody can know. */
  readonly amount?: string | null;
}

const LotTable = ({
  title,
  aside,
  none,
  rows,
}: {
  readonly title: string;
  readonly aside?: string;
  readonly none: string;
  readonly rows: readonly LotRow[];
}) => (
  <Card title={title} aside={rows.length > 0 && aside} isFlush={rows.length > 0}>
    {rows.length === 0 ? (
      <p className="soft">{none}</p>
    ) : (
      <Table
        caption={title}
        isCaptionHidden
        rows={rows}
        keyOf={(row) => row.lot.id}
        columns={[
          { head: traceWords.lot, cell: (row) => <LotLink lot={row.lot} />, isCode: true },
          { head: traceWords.item, cell: (row) => row.lot.itemName },
          ...(rows.some((row) => row.amount !== undefined) ? [AMOUNT] : []),
          { head: traceWords.state, cell: (row) => traceWords.status[row.lot.status] },
          { head: traceWords.how, cell: (row) => traceWords.through(row.depth) },
        ]}
      />
    )}
  </Card>
);

const AMOUNT: Column<LotRow> = {
  head: traceWords.amount,
  cell: (row) => (row.amount ? showAmount(row.amount, row.lot.unit) : partWords.notKnown),
  isNumber: true,
};

const OrderTable = ({ trace }: { readonly trace: Trace }) => (
  <Card title={traceWords.orders} isFlush={trace.orders.length > 0}>
    {trace.orders.length === 0 ? (
      <p className="soft">{traceWords.ordersNone}</p>
    ) : (
      <Table
        caption={traceWords.orders}
        isCaptionHidden
        rows={trace.orders}
        keyOf={(row) => `${row.orderId} ${row.lotNumber}`}
        columns={[
          {
            head: traceWords.order,
            cell: (row) => <Link to={`/orders/${row.orderId}` as '/'}>{row.number}</Link>,
          },
          { head: traceWords.customer, cell: (row) => row.customerName || traceWords.erased },
          { head: traceWords.units, cell: (row) => row.units, isNumber: true },
          { head: traceWords.batch, cell: (row) => row.lotNumber, isCode: true },
          { head: traceWords.sentOn, cell: (row) => sayDate(row.sentOn) },
        ]}
      />
    )}
  </Card>
);

const Balance = ({ balance }: { readonly balance: NonNullable<Trace['balance']> }) => (
  <Card title={traceWords.balance}>
    <Figures>
      <Figure label={traceWords.received} value={showAmount(balance.receivedGrams, 'g')} />
      <Figure label={traceWords.used} value={showAmount(balance.usedGrams, 'g')} />
      <Figure label={traceWords.here} value={showAmount(balance.onHandGrams, 'g')} />
      <Figure label={traceWords.waste} value={showAmount(balance.wasteGrams, 'g')} />
      <Figure label={traceWords.unexplained} value={showAmount(balance.unexplainedGrams, 'g')} />
    </Figures>
    <p>
      <State kind={balance.verdict === 'within' ? 'ready' : 'watch'}>
        {balance.verdict === 'within' ? traceWords.within : traceWords.look}
      </State>
    </p>
    <ShowWorking
      calculation="mass-balance"
      input={{
        receivedGrams: Number(balance.receivedGrams),
        usedGrams: [Number(balance.usedGrams)],
        onHandGrams: Number(balance.onHandGrams),
        wasteGrams: Number(balance.wasteGrams),
      }}
    />
  </Card>
);
