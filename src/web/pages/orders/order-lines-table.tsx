import { answerWords, orderWords, partWords } from '../../../words/index.ts';
import { Table } from '../../parts/table.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import type { Order } from './order.ts';

type Line = Order['lines'][number];
const { one: words } = orderWords;

function Batches({ of: rows }: { readonly of: Line['sent'] }) {
  if (rows.length === 0) return <span className="soft">{partWords.nothing}</span>;
  return rows.map(({ lotId, lotNumber, units }, index) => (
    <span key={lotId}>
      {index > 0 && ', '}
      <TextLink to={`/shelf/lots/${lotId}`}>{words.ofBatch(units, lotNumber)}</TextLink>
    </span>
  ));
}

/** Whoever ordered it may ask what is in it. */
const Asked = ({ line: { productId, productName } }: { readonly line: Line }) => (
  <>
    {productName} <TextLink to={`/products/${productId}#origins`}>{answerWords.title}</TextLink>
  </>
);

export const OrderLinesTable = ({ lines }: { readonly lines: readonly Line[] }) => (
  <Table
    caption={words.linesTitle}
    isCaptionHidden
    rows={lines}
    keyOf={({ id }) => id}
    columns={[
      { head: words.product, cell: (line) => <Asked line={line} /> },
      { head: words.units, cell: ({ units }) => units, isNumber: true },
      { head: words.keptFrom, cell: ({ reserved }) => <Batches of={reserved} /> },
      { head: words.sentFrom, cell: ({ sent }) => <Batches of={sent} /> },
    ]}
  />
);
