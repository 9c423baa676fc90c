import { useParams } from '@tanstack/react-router';
import { makingWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Loaded } from '../../parts/loaded.tsx';
import { BatchRecord } from './batch-record.tsx';
import { Bench } from './bench.tsx';
import { HandBench } from './hand-bench.tsx';

/** While it is being made: one step a screen. Afterwards: its record. */
export function BatchPage() {
  const { id } = useParams({ from: '/making/$id' });
  return (
    <Loaded read={useRead('getBatch', { params: { id } })} title={makingWords.title}>
      {(batch) => {
        if (batch.state !== 'making') return <BatchRecord batch={batch} />;
        return batch.isWithoutRecipe ? <HandBench batch={batch} formulaId={null} /> : <Bench batch={batch} />;
      }}
    </Loaded>
  );
}
