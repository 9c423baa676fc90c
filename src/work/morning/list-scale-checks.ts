import type { trace } from '../../contract/index.ts';
import { saying } from '../saying.ts';
import { isHeld } from '../scale-error.ts';
import { isCheckDue } from '../view-scale.ts';
import type { MorningData } from './read-morning.ts';

/** Lines after which something is weighed in: a batch under way, a base to melt, tins to make. */
const IS_WEIGHED = /^(batch|melt|make) /;

/** Scales to be checked, only where something is to be weighed today: before the first of it. */
export function listScaleChecks(
  { book, scales }: MorningData,
  makings: readonly trace.MorningLine[],
): trace.MorningLine[] {
  const isWeighed = makings.some(({ key, action }) => action !== null && IS_WEIGHED.test(key));
  if (!isWeighed) return [];
  return scales
    .filter((scale) => isCheckDue(scale, book.today))
    .map((scale) => ({
      key: `scale ${scale.id}`,
      title: scale.name,
      state: isHeld(scale) ? ('stop' as const) : ('watch' as const),
      stateWord: saying(isHeld(scale) ? 'morning-scale-held' : 'morning-scale-due'),
      detail: [saying('morning-scale-weight', { weight: scale.check_weight_grams ?? '' })],
      action: { words: saying('morning-scale-check'), to: `/scales/${scale.id}#check` },
      level: null,
    }));
}
