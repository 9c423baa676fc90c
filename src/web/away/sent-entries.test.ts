import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Kept } from '../api/kept.ts';
import type { KeptEntry } from './kept-entry.ts';
import { makeSentEntries } from './sent-entries.ts';

const entryOf = (id: string, body: object = {}) =>
  ({ id, route: 'beginStep', params: { id: 'batch' }, body }) as unknown as KeptEntry;
const afterwards = () => performance.now() + 1;

/** A browser's memory that outlives the page. */
function makeMemory(): Kept {
  const texts = new Map<string, string>();
  return {
    read: (key) => texts.get(key) ?? null,
    write: (key, value) => (value === null ? texts.delete(key) : texts.set(key, value)),
  };
}

describe('an entry that has arrived', () => {
  let memory: Kept;
  let page: ReturnType<typeof makeSentEntries>;
  const left = (at = page) => at.store.read().map((sent) => sent.entry.id);

  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setTimeout'] });
    memory = makeMemory();
    page = makeSentEntries(memory);
    page.noteSent(entryOf('e'));
  });
  afterEach(() => vi.useRealTimers());

  it('stays in sight until the answer that tells of it is on the page, and not a moment less', () => {
    page.noteTold('getBatch', 'batch', afterwards());
    expect(left()).toEqual(['e']);
    vi.runAllTimers();
    expect(left()).toEqual([]);
  });

  it('stays where the batch was asked before it arrived, or where something else was asked', () => {
    page.noteTold('getBatch', 'batch', performance.now() - 1000);
    page.noteTold('getBatch', 'other', afterwards());
    page.noteTold('getBatchPhotos', 'batch', afterwards());
    vi.runAllTimers();
    expect(left()).toEqual(['e']);
  });

  it('is in sight after a reload too, in order, until the workshop tells of it', () => {
    page.noteSent(entryOf('f'));
    const reloaded = makeSentEntries(memory);
    expect(left(reloaded)).toEqual(['e', 'f']);
    reloaded.noteTold('getBatch', 'batch', afterwards());
    vi.runAllTimers();
    expect(left(reloaded)).toEqual([]);
    expect(left(makeSentEntries(memory))).toEqual([]);
  });

  it('is not forgotten with what another tab was told of', () => {
    const beside = makeSentEntries(memory);
    page.noteSent(entryOf('f'));
    beside.noteTold('getBatch', 'batch', afterwards());
    vi.runAllTimers();
    expect(left(makeSentEntries(memory))).toEqual(['f']);
  });

  it('is not kept where it is a picture, and forgotten by a device that is dropped', () => {
    page.noteSent(entryOf('picture', { jpeg: 'x'.repeat(30_000) }));
    expect(left()).toEqual(['e', 'picture']);
    expect(left(makeSentEntries(memory))).toEqual(['e']);
    page.forget();
    expect([...left(), ...left(makeSentEntries(memory))]).toEqual([]);
  });

  it('is nothing where the memory was written by something else', () => {
    for (const text of ['{}', '[', 'null']) {
      memory.write('sent', text);
      expect(left(makeSentEntries(memory))).toEqual([]);
    }
  });
});
