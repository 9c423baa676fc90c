import { describe, expect, it } from 'vitest';
import type { Kept } from './kept.ts';
import { makeKeptDraft } from './make-kept-draft.ts';

function memory(): Kept & { readonly all: Map<string, string> } {
  const all = new Map<string, string>();
  return {
    all,
    read: (key) => all.get(key) ?? null,
    write: (key, value) => {
      if (value === null) all.delete(key);
      else all.set(key, value);
    },
  };
}
const first = { grams: '', lotId: 'a' };

describe('a draft that is kept', () => {
  it('comes back as it was typed, and tells who watches it', () => {
    const store = memory();
    const draft = makeKeptDraft(store, 'k', first);
    let told = 0;
    const leave = draft.watch(() => {
      told += 1;
    });
    draft.change({ grams: '300' });
    leave();
    draft.change({ lotId: 'b' });
    expect(told).toBe(1);
    expect(makeKeptDraft(store, 'k', first).read()).toEqual({ grams: '300', lotId: 'b' });
  });

  it('stays forgotten where another field is set right after it, by whoever was drawn before', () => {
    const store = memory();
    const draft = makeKeptDraft(store, 'k', first);
    draft.change({ grams: '300' });
    const { change } = draft;
    draft.forget();
    expect(store.all.size).toBe(0);
    change({ lotId: 'b' });
    expect(draft.read()).toEqual({ grams: '', lotId: 'b' });
    expect(store.all.get('k')).toBe('{"grams":"","lotId":"b"}');
  });

  it('begins anew where what is kept is not its own', () => {
    const store = memory();
    for (const text of ['{', 'null', '[1]', '{"grams":5,"other":"x"}']) {
      store.write('k', text);
      expect(makeKeptDraft(store, 'k', first).read()).toEqual(first);
    }
  });
});
