import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { WayDraft } from './way-fields.tsx';

/** As the workshop wants it: only the mean has a tare and empty tins of its own. */
export const wayOf = ({ way, tare, tares }: WayDraft) => ({
  way,
  tareGrams: way === 'mean' ? typedDecimalOrNull(tare) : null,
  tares: way === 'mean' ? [...tares] : [],
});
