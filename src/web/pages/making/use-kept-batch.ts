import { useKept } from '../../away/use-kept.ts';
import { usePersonNow } from '../../shell/use-person-now.ts';
import type { Batch } from './batch.ts';
import { projectKept } from './project-kept.ts';

/** The batch with what lies on this tablet only. */
export function useKeptBatch(batch: Batch): Batch {
  const { people } = usePersonNow();
  return projectKept(batch, useKept(batch.id), (id) => people.find((person) => person.id === id)?.name ?? '');
}
