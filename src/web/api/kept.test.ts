import { describe, expect, it } from 'vitest';
import { makeKept } from './kept.ts';

function storageOf(items: Map<string, string>): Storage {
  return {
    length: items.size,
    clear: () => items.clear(),
    key: () => null,
    getItem: (key) => items.get(key) ?? null,
    setItem: (key, value) => void items.set(key, value),
    removeItem: (key) => void items.delete(key),
  };
}

describe('what a browser keeps', () => {
  it('is read as it was written, under the name of the program, until it is forgotten', () => {
    const items = new Map<string, string>();
    const kept = makeKept(() => storageOf(items));
    kept.write('bench.b.0', '12.5');
    expect([...items.keys()]).toEqual(['gramwright.bench.b.0']);
    expect(kept.read('bench.b.0')).toBe('12.5');
    kept.write('bench.b.0', null);
    expect(kept.read('bench.b.0')).toBeNull();
  });

  it('is nothing where storage is forbidden, and nothing breaks', () => {
    const kept = makeKept(() => {
      throw new Error('SecurityError');
    });
    kept.write('bench.b.0', '12.5');
    expect(kept.read('bench.b.0')).toBeNull();
  });
});
