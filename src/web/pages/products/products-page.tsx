import { answerWords, productFileWords, productWords, sayGrams, sayMoney } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import type { Product } from './product.ts';

export const ProductsPage = () => (
  <Loaded read={useRead('listProducts')} title={productWords.title}>
    {(products) => (
      <Page
        title={productWords.title}
        says={productWords.says(products.filter(({ details }) => !details.isWithdrawn).length)}
        soft={productWords.soft}
        actions={
          <LinkButton to="/products/new" isAct>
            {productWords.add}
          </LinkButton>
        }
        isNarrow
      >
        <Card isFlush>
          <List rows={products} keyOf={({ id }) => id} empty={productWords.none}>
            {(product) => <ProductLine product={product} />}
          </List>
        </Card>
      </Page>
    )}
  </Loaded>
);

function ProductLine({ product: { id, details, formulaName } }: { readonly product: Product }) {
  const currency = useRead('getWorkshop').data?.details?.currency ?? 'GBP';
  return (
    <>
      <ListRow>
        <strong>{details.name}</strong>
        <span>{details.price === null ? productWords.noPrice : sayMoney(details.price, currency)}</span>
      </ListRow>
      <p className="soft">{productWords.about(sayGrams(details.declaredGrams), formulaName)}</p>
      <ListFoot>
        <State kind={details.isWithdrawn ? 'plain' : 'ready'}>
          {details.isWithdrawn ? productWords.withdrawn : productWords.sold}
        </State>
        <LinkButton to={`/products/${id}#origins`} label={`${answerWords.title} ${details.name}`}>
          {answerWords.title}
        </LinkButton>
        <LinkButton to={`/products/${id}/file`} label={`${productFileWords.toFile}: ${details.name}`}>
          {productFileWords.toFile}
        </LinkButton>
        <LinkButton to={`/products/${id}`} label={`${productWords.look}: ${details.name}`}>
          {productWords.look}
        </LinkButton>
      </ListFoot>
    </>
  );
}
