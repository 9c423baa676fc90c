import { describe, expect, it } from 'vitest';
import { type Key, pressKey } from './press-key.ts';

const press = (...keys: Key[]): string => keys.reduce(pressKey, '');

describe('pressKey', () => {
  it('writes a weight key by key', () => {
    expect(press('3', '.', '3', '7')).toBe('3.37');
  });

  it('begins a fraction with its nought and takes one point only', () => {
    expect(press('.', '5')).toBe('0.5');
    expect(press('1', '.', '2', '.', '5')).toBe('1.25');
  });

  it('does not pile up noughts before a number', () => {
    expect(press('0', '0', '7')).toBe('7');
  });

  it('rubs out the last sign, and nothing from nothing', () => {
    expect(press('1', '2', 'rub-out')).toBe('1');
    expect(press('rub-out')).toBe('');
  });

  it('stops taking digits when a key is stuck', () => {
    expect(press(...Array.from({ length: 40 }, (): Key => '8'))).toHaveLength(12);
  });
});
