import { labelWords, sayMarkets } from '../../../words/index.ts';
import type { RequestOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { findMend, type MendAt } from './find-mend.ts';

type Asked = NonNullable<RequestOf<'listLabelLacks'>['body']>;

interface Props {
  /** undefined: not enough is typed to tell. */
  readonly asked: Asked | undefined;
  /** On the product's own page its fields stand beside it. */
  readonly isOnProduct?: boolean;
}

const { lacks: words } = labelWords;

/** What the label will lack, before anything is filled: nothing is released for sale without it. */
export function LabelLacks({ asked, isOnProduct = false }: Props) {
  const request = asked ? { body: asked } : {};
  const { data } = useRead('listLabelLacks', request, { isWanted: asked !== undefined, keepsLast: true });
  if (!asked || !data || data.length === 0) return null;
  const pages: Readonly<Record<MendAt, string | null>> = {
    product: isOnProduct || !asked.productId ? null : `/products/${asked.productId}`,
    workshop: '/workshop#details',
    materials: '/materials',
    check: `/formulas/${asked.details.formulaId}/check`,
  };
  return (
    <Card title={words.title}>
      <ul>
        {data.map((lack) => {
          const at = findMend(lack);
          const page = pages[at];
          return (
            <li key={JSON.stringify(lack)}>
              <State kind="watch">
                <Sentence saying={lack.says} />
              </State>{' '}
              <span className="soft">({sayMarkets(lack.markets.join(', '))})</span>{' '}
              {page === null ? words.here : <TextLink to={page}>{words.mendAt[at]}</TextLink>}
            </li>
          );
        })}
      </ul>
      <p className="soft">{words.why}</p>
    </Card>
  );
}
