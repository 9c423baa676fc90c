import { kept } from './kept.ts';

/** A name for this machine that a person may recognise in the record; anyone may change it on the workshop page. */
export const deviceName = {
  read: (): string => kept.read('device') ?? guessDevice(navigator.userAgent),
  write: (name: string): void => kept.write('device', name.trim() === '' ? null : name.trim().slice(0, 100)),
};

export function guessDevice(userAgent: string): string {
  if (/iPhone|Android.*Mobile/.test(userAgent)) return 'phone';
  if (/iPad|Android/.test(userAgent)) return 'tablet';
  return 'computer';
}
