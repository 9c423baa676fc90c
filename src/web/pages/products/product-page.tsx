import { answerWords, complaintWords, productFileWords, productWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Skeleton } from '../../parts/skeleton.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { ProductAnswers } from '../answers/answers-card.tsx';
import { draftOfProduct } from './product-draft.ts';
import { ProductEditor } from './product-editor.tsx';
import { useParts } from './use-parts.ts';

export function ProductPage() {
  const id = useParam('id');
  const parts = useParts();
  return (
    <Loaded key={id} read={useRead('listProducts')} title={productWords.title}>
      {(products) => {
        const product = products.find((one) => one.id === id);
        if (!product) return <NotFound />;
        if (!parts) return <Skeleton />;
        return (
          <Page
            title={product.details.name}
            above={productWords.title}
            says={product.details.name}
            actions={
              <>
                <LinkButton to={`/products/${id}#origins`}>{answerWords.title}</LinkButton>
                <LinkButton to={`/products/${id}/file`}>{productFileWords.toFile}</LinkButton>
                <LinkButton to={`/complaints/new?product=${id}`}>{complaintWords.add}</LinkButton>
              </>
            }
            isNarrow
          >
            <ProductEditor first={draftOfProduct(product.details)} product={product} parts={parts} />
            <ProductAnswers productId={product.id} />
          </Page>
        );
      }}
    </Loaded>
  );
}
