import { sayInstant, scaleWords } from '../../../words/index.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { State } from '../../parts/state.tsx';
import type { Scale } from './scale.ts';

/** Whether a scale may weigh today, in a word. */
export function ScaleState({ scale: { check } }: { readonly scale: Scale }) {
  const zone = useTimeZone();
  const { state: words } = scaleWords;
  if (!check) return <State kind="plain">{words.noWeight}</State>;
  const at = check.lastAt === null ? '' : sayInstant(check.lastAt, zone);
  if (check.isHeld) return <State kind="stop">{words.held(at)}</State>;
  if (check.isDue) return <State kind="watch">{words.due}</State>;
  return <State kind="ready">{words.good(at)}</State>;
}
