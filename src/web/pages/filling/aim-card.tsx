import { aimWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { AimAdvice } from './aim-advice.tsx';
import type { Run } from './run.ts';

/** What this run should aim at, by the way in which its tins are weighed now. */
export function AimCard({ run }: { readonly run: Run }) {
  const read = useRead('adviseAim', {
    params: { id: run.batchId },
    query: {
      productId: run.productId,
      scaleId: run.scale.id,
      wanted: String(run.wanted),
      tareGrams: run.tareGrams ?? '',
      errorGrams: run.errorGrams,
      tareSpreadGrams: run.tareSpreadGrams ?? '',
    },
  });
  if (!read.data) return null;
  return (
    <Card title={aimWords.title}>
      <AimAdvice advice={read.data} wanted={run.wanted} />
    </Card>
  );
}
