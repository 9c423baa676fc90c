import { useKept } from '../../away/use-kept.ts';
import { usePersonNow } from '../../shell/use-person-now.ts';
import { projectKeptRun } from './project-kept-run.ts';
import type { Run } from './run.ts';

/** The run with what lies on this tablet only. */
export function useKeptRun(run: Run): Run {
  const { people } = usePersonNow();
  return projectKeptRun(run, useKept(run.id), (id) => people.find((person) => person.id === id)?.name ?? '');
}
