import { productWords } from '../../../words/index.ts';
import { Skeleton } from '../../parts/skeleton.tsx';
import { NeedsPage } from '../../shell/needs-page.tsx';
import { Page } from '../../shell/page.tsx';
import { EMPTY_PRODUCT } from './product-draft.ts';
import { ProductEditor } from './product-editor.tsx';
import { useParts } from './use-parts.ts';

const { form: words, needs } = productWords;

export function NewProductPage() {
  const parts = useParts();
  if (!parts) return <Skeleton />;
  if (parts.formulas.length === 0)
    return <NeedsPage title={words.newTitle} says={needs.formula} to="/formulas/new" act={needs.toFormula} />;
  if (parts.tins.length === 0)
    return <NeedsPage title={words.newTitle} says={needs.tin} to="/materials/new" act={needs.toTin} />;
  return (
    <Page title={words.newTitle} soft={productWords.soft} isNarrow>
      <ProductEditor first={EMPTY_PRODUCT} parts={parts} />
    </Page>
  );
}
