import { type BenchWrite, useBenchWrite } from '../../api/use-bench-write.ts';
import type { StepProps } from './step-props.ts';

interface Round {
  readonly load?: number;
  readonly round?: number;
  readonly minutes?: string | null;
}

export interface Begin {
  readonly begin: (round?: Round) => Promise<boolean>;
  readonly save: BenchWrite<'beginStep'>;
}

/** A beginning is an entry: who, when; every tablet sees the time run. */
export function useBegin({ batch, screen }: Pick<StepProps, 'batch' | 'screen'>): Begin {
  const save = useBenchWrite('beginStep');
  return {
    begin: async (round = {}) => {
      const body = { position: screen.position, ...round };
      return (await save.write({ params: { id: batch.id }, body })) !== undefined;
    },
    save,
  };
}
