import type { Batch, Step } from './batch.ts';

/** What every screen of a step is given. */
export interface StepProps {
  readonly batch: Batch;
  readonly screen: Step;
  readonly doneWord: string;
  readonly onDone: () => void;
  readonly all: number;
}
