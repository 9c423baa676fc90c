import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { traceWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { List } from '../../parts/list.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Page } from '../../shell/page.tsx';
import { showAmount } from '../../show/show-amount.ts';

/** From what stands on a tin or a tub to its whole story. */
export function TracePage() {
  const [like, setLike] = useState('');
  const found = useRead('findLots', { query: { like } }, { isWanted: like.trim() !== '', keepsLast: true });
  return (
    <Page title={traceWords.title} says={traceWords.says} isNarrow>
      <Field
        label={traceWords.search}
        where="like"
        value={like}
        onChange={setLike}
        hint={traceWords.hint}
        isBench
        isFirst
      />
      {like.trim() !== '' && found.data && (
        <Card title={traceWords.found} isFlush>
          <List rows={found.data} keyOf={(lot) => lot.id} empty={traceWords.none}>
            {(lot) => (
              <>
                <ListRow>
                  <Link to="/trace/$id" params={{ id: lot.id }}>
                    {lot.number} {lot.itemName}
                  </Link>
                  <span>{showAmount(lot.onHand, lot.unit)}</span>
                </ListRow>
                <p className="soft">
                  {traceWords.status[lot.status]}
                  {lot.supplierLot !== null && ` · ${lot.supplierLot}`}
                </p>
              </>
            )}
          </List>
        </Card>
      )}
    </Page>
  );
}
