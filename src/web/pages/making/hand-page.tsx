import { useSearch } from '@tanstack/react-router';
import { HandBench } from './hand-bench.tsx';

/** Before the first weighing there is no batch yet. */
export function HandPage() {
  const { formula } = useSearch({ from: '/making/by-hand' });
  return <HandBench batch={null} formulaId={formula ?? null} />;
}
