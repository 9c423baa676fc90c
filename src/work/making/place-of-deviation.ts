import type { making } from '../../contract/index.ts';
import type { SignedAddition } from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';

type Place = Pick<making.BatchDeviation, 'step' | 'offGrams'>;

/**
 * At which step something was done differently; of the weighing that it was said with, how far off it was from what was
 * left to weigh then. A part is not off: more of it was to come.
 */
export function placeOfDeviation(
  screens: readonly making.BatchScreen[],
  additions: readonly SignedAddition[],
  { screen: at, entry_id }: { readonly screen: number | null; readonly entry_id: string },
): Place {
  const screen = screens.find((each) => each.screen === at);
  if (!screen) return { step: null, offGrams: null };
  if (screen.kind === 'step') return { step: screen.what, offGrams: null };
  const own = additions.find((row) => row.entry_id === entry_id && !row.is_struck);
  const offUg = own && own.is_part !== 1 ? own.actual_ug - own.target_ug : 0;
  return { step: screen.itemName, offGrams: offUg === 0 ? null : gramsText(offUg) };
}
