import { afterEach, describe, expect, it, vi } from 'vitest';
import { makeId } from './make-id.ts';

/** RFC 9562, 5.4: version 4 in the third group, variant 10 in the fourth. */
const VERSION_4 = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

describe('makeId', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('makes an id of version 4, another each time', () => {
    expect(makeId()).toMatch(VERSION_4);
    expect(makeId()).not.toBe(makeId());
  });

  it('makes one where the page came over plain http and the browser offers no randomUUID', () => {
    vi.stubGlobal('crypto', { getRandomValues: (bytes: Uint8Array) => bytes.fill(255) });
    expect(makeId()).toBe('ffffffff-ffff-4fff-bfff-ffffffffffff');
  });
});
