import { exact } from '../quantity/index.ts';
import type { BowlEvent } from './stage-yields.ts';

interface Weighed {
  readonly grossGrams: string;
  readonly tareGrams: string;
}

/** A batch's screen, as far as it tells of the bowl. */
export type BowlScreen =
  | { readonly kind: 'addition' /** What lies in of it by now. */; readonly inGrams: string }
  | {
      readonly kind: 'step';
      readonly stepKind: string;
      readonly what: string;
      readonly done: { readonly weighed: Weighed | null } | null;
    };

/** What went into the bowl, and what it weighed, in the order of the method; a cup is no bowl. */
export const readBowlEvents = (screens: readonly BowlScreen[]): BowlEvent[] =>
  screens.flatMap((screen): BowlEvent[] => {
    if (screen.kind === 'addition') return [{ kind: 'in', grams: screen.inGrams }];
    const weighed = screen.stepKind === 'weigh' ? screen.done?.weighed : null;
    if (!weighed) return [];
    return [
      { kind: 'weighed', name: screen.what, grams: exact(weighed.grossGrams).minus(weighed.tareGrams) },
    ];
  });
