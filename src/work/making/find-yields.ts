import type { making, steps } from '../../contract/index.ts';
import { type BowlEvent, findStageYields, readBowlEvents } from '../../core/making/index.ts';
import { gramsFromMicrograms, toText } from '../../core/quantity/index.ts';
import { type BatchHead, listRunCloses, type Reader, type RunState } from '../../storage/index.ts';
import { stepWords } from '../../words/index.ts';

/** What each stage left behind, from the first weighing of the whole to the last tin. */
export async function findYields(
  db: Reader,
  { outcome, yield_ug }: BatchHead,
  screens: readonly making.BatchScreen[],
  runs: readonly RunState[],
): Promise<steps.StageYield[]> {
  const events = readBowlEvents(screens);
  if (outcome === 'made') {
    const madeUg = yield_ug ?? 0;
    events.push({ kind: 'made', name: stepWords.yields.made, grams: gramsFromMicrograms(madeUg) });
    events.push(...(await filledOf(db, madeUg, runs)));
  }
  return findStageYields(events).map((stage) => ({
    name: stage.name,
    kind: stage.kind,
    expectedGrams: toText(stage.expectedGrams),
    foundGrams: toText(stage.foundGrams),
    lossGrams: toText(stage.lossGrams),
    lossPercent: toText(stage.lossPercent.toDecimalPlaces(2)),
  }));
}

/** Known once every run that was begun is closed: until then it is still being filled. */
async function filledOf(db: Reader, madeUg: number, runs: readonly RunState[]): Promise<BowlEvent[]> {
  if (runs.length === 0 || runs.some((run) => !run.is_closed)) return [];
  const closes = await listRunCloses(
    db,
    runs.map((run) => run.id),
  );
  const lostUg = closes.reduce((sum, row) => sum + row.lost_ug, 0);
  return [{ kind: 'filled', name: stepWords.yields.filled, grams: gramsFromMicrograms(madeUg - lostUg) }];
}
