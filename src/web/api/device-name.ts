import { kept } from './kept.ts';

/** A name for this machine that a person may recognise in the record; anyone may change it on the workshop page. */
export const deviceName = {
  read: (): string => kept.read('device') ?? guessDevice(navigator),
  write: (name: string): void => kept.write('device', name.trim() === '' ? null : name.trim().slice(0, 100)),
};

/** A tablet may call itself a Mac (iPad, Safari 13 and later; from memory); only what is touched has points of touch. */
export function guessDevice({
  userAgent,
  maxTouchPoints = 0,
}: {
  readonly userAgent: string;
  readonly maxTouchPoints?: number;
}): string {
  if (/iPhone|Android.*Mobile/.test(userAgent)) return 'phone';
  if (/iPad|Android/.test(userAgent)) return 'tablet';
  if (/Macintosh/.test(userAgent) && maxTouchPoints > 1) return 'tablet';
  return 'computer';
}
