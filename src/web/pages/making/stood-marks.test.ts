import { describe, expect, it } from 'vitest';
import type { Kept } from '../../api/kept.ts';
import { markStood, readStood, stillRunning } from './stood-marks.ts';

function makeStore(): Kept {
  const values = new Map<string, string>();
  return {
    read: (key) => values.get(key) ?? null,
    write: (key, value) => (value === null ? values.delete(key) : values.set(key, value)),
  };
}

describe('a machine that was stopped to look', () => {
  it('stands from then on, and its timer alone runs no more', () => {
    const store = makeStore();
    const timers = [{ key: 'a' }, { key: 'b' }];
    markStood({ key: 'a' }, 1_764_000_000_000, store);
    expect(readStood({ key: 'a' }, store)).toBe(1_764_000_000_000);
    expect(stillRunning(timers, store)).toEqual([{ key: 'b' }]);
  });

  it('runs again where the stop was taken back', () => {
    const store = makeStore();
    markStood({ key: 'a' }, 5, store);
    markStood({ key: 'a' }, null, store);
    expect(readStood({ key: 'a' }, store)).toBeUndefined();
  });
});
