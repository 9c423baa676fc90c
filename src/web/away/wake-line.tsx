import { awayWords } from '../../words/index.ts';
import { useWakeLock } from './use-wake-lock.ts';

/** Keeps the screen on where it stands; says so calmly where the browser does not. */
export function WakeLine() {
  const wake = useWakeLock();
  return wake === 'off' && <p className="soft small">{awayWords.wake.notHeld}</p>;
}
