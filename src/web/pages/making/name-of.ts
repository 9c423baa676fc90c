import type { Screen } from './batch.ts';

/** By what a screen of the bench goes: what is weighed in, or what is done. */
export const nameOf = (screen: Screen): string =>
  screen.kind === 'addition' ? screen.itemName : screen.what;
