import { productWords } from '../../../words/index.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Skeleton } from '../../parts/skeleton.tsx';
import { Page } from '../../shell/page.tsx';
import { EMPTY_PRODUCT } from './product-draft.ts';
import { ProductEditor } from './product-editor.tsx';
import { useParts } from './use-parts.ts';

const { form: words, needs } = productWords;

export function NewProductPage() {
  const parts = useParts();
  if (!parts) return <Skeleton />;
  if (parts.formulas.length === 0)
    return <Needs says={needs.formula} to="/formulas/new" act={needs.toFormula} />;
  if (parts.tins.length === 0) return <Needs says={needs.tin} to="/materials/new" act={needs.toTin} />;
  return (
    <Page title={words.newTitle} soft={productWords.soft} isNarrow>
      <ProductEditor first={EMPTY_PRODUCT} parts={parts} />
    </Page>
  );
}

interface NeedsProps {
  readonly says: string;
  readonly to: string;
  readonly act: string;
}

/** What has to be there before a product can be. */
const Needs = ({ says, to, act }: NeedsProps) => (
  <Page
    title={words.newTitle}
    above={words.newTitle}
    says={says}
    actions={
      <LinkButton to={to} isAct>
        {act}
      </LinkButton>
    }
    isNarrow
  />
);
