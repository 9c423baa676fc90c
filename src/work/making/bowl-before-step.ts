import { findBowlGrams, readBowlEvents } from '../../core/making/index.ts';
import type { Exact } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  listAdditions,
  listBatchLines,
  listBatchSteps,
  listStepRecords,
  type Writer,
} from '../../storage/index.ts';
import { buildScreens } from './batch-screens.ts';
import { findBase } from './find-base.ts';

type Screen = ReturnType<typeof buildScreens>[number];

/** The screen of a step as it stands, and what lies in the bowl before it by what was weighed; null: no such step. */
export async function bowlBeforeStep(
  tx: Writer,
  batch: BatchHead,
  position: number,
): Promise<{ readonly screen: Extract<Screen, { kind: 'step' }>; readonly bowlGrams: Exact } | null> {
  const screens = buildScreens({
    lines: await listBatchLines(tx, batch.id),
    steps: await listBatchSteps(tx, batch.id),
    additions: await listAdditions(tx, batch.id),
    stepRecords: await listStepRecords(tx, batch.id),
    base: await findBase(tx, batch),
  });
  const at = screens.findIndex((each) => each.kind === 'step' && each.position === position);
  const screen = screens[at];
  if (screen?.kind !== 'step') return null;
  return { screen, bowlGrams: findBowlGrams(readBowlEvents(screens.slice(0, at))) };
}
