import { describe, expect, it } from 'vitest';
import { guessDevice } from './device-name.ts';

describe('guessDevice', () => {
  it('tells phone, tablet and computer apart by what the browser calls itself', () => {
    expect(guessDevice('Mozilla/5.0 (Linux; Android 14; X) AppleWebKit Mobile Safari')).toBe('phone');
    expect(guessDevice('Mozilla/5.0 (Linux; Android 14; X) AppleWebKit Safari')).toBe('tablet');
    expect(guessDevice('Mozilla/5.0 (X11; Linux x86_64) AppleWebKit Safari')).toBe('computer');
  });
});
