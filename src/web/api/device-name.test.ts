import { describe, expect, it } from 'vitest';
import { guessDevice } from './device-name.ts';

describe('guessDevice', () => {
  it('tells phone, tablet and computer apart by what the browser calls itself', () => {
    expect(guessDevice({ userAgent: 'Mozilla/5.0 (Linux; Android 14; X) AppleWebKit Mobile Safari' })).toBe(
      'phone',
    );
    expect(guessDevice({ userAgent: 'Mozilla/5.0 (Linux; Android 14; X) AppleWebKit Safari' })).toBe(
      'tablet',
    );
    const iPad = { userAgent: 'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15) AppleWebKit Safari' };
    expect(guessDevice({ ...iPad, maxTouchPoints: 5 })).toBe('tablet');
    expect(guessDevice({ ...iPad, maxTouchPoints: 0 })).toBe('computer');
    expect(guessDevice({ userAgent: 'Mozilla/5.0 (X11; Linux x86_64) AppleWebKit Safari' })).toBe('computer');
  });
});
