import { useSearch } from '@tanstack/react-router';
import { complaintWords, productWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Loaded } from '../../parts/loaded.tsx';
import { Skeleton } from '../../parts/skeleton.tsx';
import { NeedsPage } from '../../shell/needs-page.tsx';
import { Page } from '../../shell/page.tsx';
import { ComplaintForm } from './complaint-form.tsx';

export function NewComplaintPage() {
  const { product, run } = useSearch({ from: '/complaints/new' });
  const workshop = useRead('getWorkshop').data;
  const runs = useRead('listRuns').data;
  return (
    <Loaded read={useRead('listProducts')} title={complaintWords.newTitle}>
      {(products) => {
        if (products.length === 0)
          return (
            <NeedsPage
              title={complaintWords.newTitle}
              says={productWords.none}
              to="/products"
              act={productWords.title}
            />
          );
        if (!workshop || !runs) return <Skeleton />;
        return (
          <Page
            title={complaintWords.newTitle}
            above={complaintWords.title}
            soft={complaintWords.soft}
            isNarrow
          >
            <ComplaintForm
              products={products}
              runs={runs}
              today={workshop.today}
              first={{ productId: product ?? products[0]?.id ?? '', runId: run ?? '' }}
            />
          </Page>
        );
      }}
    </Loaded>
  );
}
