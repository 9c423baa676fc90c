import { listBatchLines, listBatchSteps, type Reader } from '../../storage/index.ts';
import { buildScreens } from './batch-screens.ts';

/** On which screen of the bench an addition, or a step, of a batch stands. */
export async function findScreen(
  db: Reader,
  batchId: string,
  kind: 'addition' | 'step',
  position: number,
): Promise<number | null> {
  const screens = buildScreens({
    lines: await listBatchLines(db, batchId),
    steps: await listBatchSteps(db, batchId),
    additions: [],
    stepRecords: [],
  });
  return screens.find((screen) => screen.kind === kind && screen.position === position)?.screen ?? null;
}
