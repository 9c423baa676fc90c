import type { making } from '../../contract/index.ts';
import { exact, toText } from '../../core/quantity/index.ts';

type Place = Pick<making.BatchDeviation, 'step' | 'offGrams'>;

/** At which step something was done differently; of the weighing that it was said with, how far off the target it was. */
export function placeOfDeviation(
  screens: readonly making.BatchScreen[],
  { screen: at, entry_id }: { readonly screen: number | null; readonly entry_id: string },
): Place {
  const screen = screens.find((each) => each.screen === at);
  if (!screen) return { step: null, offGrams: null };
  if (screen.kind === 'step') return { step: screen.what, offGrams: null };
  const isOfIt = screen.done?.entryId === entry_id;
  const off = isOfIt ? exact(screen.done?.actualGrams ?? 0).minus(screen.targetGrams) : exact(0);
  return { step: screen.itemName, offGrams: off.isZero() ? null : toText(off) };
}
