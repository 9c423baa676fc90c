import type { Step } from './batch.ts';

/** A screen as it stood when its entry was sent; `isRefused`: the answer is there, and it is a question. */
export interface SentScreen {
  readonly screen: Step;
  readonly isRefused: boolean;
}

type Entered = Pick<Step, 'done' | 'whipped'>;

const hasSameEntries = (one: Entered, other: Entered): boolean =>
  (one.done === null) === (other.done === null) && one.whipped.length === other.whipped.length;

/**
 * The batch shows an entry as soon as it lies on this tablet, and for a moment after it was refused: until both are over the
 * screen stays as it was sent, so that what is asked about it is not lost with it. undefined: as the batch has it.
 */
export const holdScreen = (sent: SentScreen | undefined, now: Step): SentScreen | undefined =>
  sent && !(sent.isRefused && hasSameEntries(sent.screen, now)) ? sent : undefined;
