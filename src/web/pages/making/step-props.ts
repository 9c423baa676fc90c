import type { Batch, Step } from './batch.ts';

/** What every screen of a step is given. */
export interface StepProps {
  readonly batch: Batch;
  readonly screen: Step;
  readonly doneWord: string;
  readonly onDone: () => void;
  readonly all: number;
  /** Its entry is on its way: the screen stays as it is until the answer is there, so that a question is not lost. */
  readonly onSent?: (how: 'sent' | 'entered' | 'refused') => void;
}
