import type { Screen } from './batch.ts';

/** Whether the work went on after this place: a later step is done, or something of a later stage is weighed in. */
export const isLaterDone = (screens: readonly Screen[], at: Screen): boolean =>
  screens
    .slice(at.screen + 1)
    .some((later) => later.done !== null && (later.kind === 'step' || later.stage !== at.stage));
