import { Link, useNavigate } from '@tanstack/react-router';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { answerWords, complaintWords, traceWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { Page } from '../../shell/page.tsx';
import { showAmount } from '../../show/show-amount.ts';

const isSame = (number: string, typed: string): boolean =>
  number.toLowerCase() === typed.trim().toLowerCase();

/** From what stands on a tin or a tub to its whole story. */
export function TracePage() {
  const [like, setLike] = useState('');
  const [isEntered, setEntered] = useState(false);
  const list = useRef<HTMLDivElement>(null);
  const navigate = useNavigate();
  const found = useRead('findLots', { query: { like } }, { isWanted: like.trim() !== '', keepsLast: true });
  const { data, isPlaceholderData } = found;
  // Enter may come before the answer: the one lot is opened, of several the first is gone to.
  useEffect(() => {
    if (!isEntered || !data || isPlaceholderData) return;
    setEntered(false);
    const [first, second] = data;
    const meant = second ? data.find(({ number }) => isSame(number, like)) : first;
    if (meant) void navigate({ to: '/trace/$id', params: { id: meant.id } });
    else list.current?.querySelector('a')?.focus();
  }, [isEntered, data, isPlaceholderData, like, navigate]);
  const enter = (event: FormEvent) => {
    event.preventDefault();
    setEntered(like.trim() !== '');
  };
  return (
    <Page
      title={traceWords.title}
      says={traceWords.says}
      actions={<LinkButton to="/complaints">{complaintWords.title}</LinkButton>}
      isNarrow
    >
      <form onSubmit={enter}>
        <Field
          label={traceWords.search}
          where="like"
          value={like}
          onChange={setLike}
          hint={traceWords.hint}
          isBench
          isFirst
        />
      </form>
      <Products like={like} />
      {like.trim() !== '' && data && (
        <div ref={list}>
          <Card title={traceWords.found} isFlush>
            <List rows={data} keyOf={(lot) => lot.id} empty={traceWords.none}>
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
        </div>
      )}
    </Page>
  );
}

/** Somebody asks by the name on the tin: what is in it is told without a batch number. */
function Products({ like }: { readonly like: string }) {
  const sought = like.trim().toLowerCase();
  const { data = [] } = useRead('listProducts');
  const named =
    sought === '' ? [] : data.filter(({ details }) => details.name.toLowerCase().includes(sought));
  if (named.length === 0) return null;
  return (
    <Card title={answerWords.title} isFlush>
      <List rows={named} keyOf={({ id }) => id} empty="">
        {({ id, details }) => <TextLink to={`/products/${id}#origins`}>{details.name}</TextLink>}
      </List>
    </Card>
  );
}
