import type { TestWorkshop } from './open-test-workshop.ts';

/** Nothing of an earlier product lies on the bench: said before the first tin of a run for sale. */
export const clearArea = (bench: TestWorkshop, runId: string) =>
  bench.get('prepareRun', {
    params: { id: runId },
    body: { word: { kind: 'area', isClear: true } },
  });
