import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { KeptEntry } from './kept-entry.ts';
import { noteSent, noteTold, sentEntries } from './sent-entries.ts';

const entry = { id: 'e', route: 'beginStep', params: { id: 'batch' } } as unknown as KeptEntry;
const left = () => sentEntries.read().map((sent) => sent.entry.id);
const afterwards = () => performance.now() + 1;

describe('an entry that has arrived', () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setTimeout'] });
    sentEntries.write([]);
    noteSent(entry);
  });
  afterEach(() => vi.useRealTimers());

  it('stays in sight until the answer that tells of it is on the page, and not a moment less', () => {
    noteTold('getBatch', 'batch', afterwards());
    expect(left()).toEqual(['e']);
    vi.runAllTimers();
    expect(left()).toEqual([]);
  });

  it('stays where the batch was asked before it arrived, or where something else was asked', () => {
    noteTold('getBatch', 'batch', performance.now() - 1000);
    noteTold('getBatch', 'other', afterwards());
    noteTold('getBatchPhotos', 'batch', afterwards());
    vi.runAllTimers();
    expect(left()).toEqual(['e']);
  });
});
