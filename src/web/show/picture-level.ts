import { exact } from '../../core/quantity/index.ts';

/** How full a picture is drawn, 0 to 1. Only drawn with, never judged by: more than full is drawn full. */
export function pictureLevel(have: string, full: string): number {
  const whole = exact(full);
  if (whole.lte(0)) return 0;
  return Math.min(1, Math.max(0, exact(have).div(whole).toNumber()));
}
