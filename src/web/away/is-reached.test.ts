import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { problem } from '../../core/problem.ts';
import { connection } from '../api/connection.ts';
import { askedHere } from './is-reached.ts';

const short = [problem('time-too-short', 'minutes', { found: '5', allowed: '20' })];
const answer =
  (headers: Record<string, string> = {}) =>
  async () =>
    Response.json({}, { headers });

describe('what the tablet asks before it keeps an entry', () => {
  beforeEach(() => connection.write('answers'));
  afterEach(() => {
    vi.unstubAllGlobals();
    connection.write('answers');
  });

  it('is left to the workshop where that answers', async () => {
    vi.stubGlobal('fetch', vi.fn(answer()));
    expect(await askedHere(short)).toEqual([]);
  });

  it('is asked here of the very first entry after the workshop went silent', async () => {
    vi.stubGlobal(
      'fetch',
      vi.fn(async () => {
        throw new TypeError('Failed to fetch');
      }),
    );
    expect(await askedHere(short)).toEqual(short);
    expect(connection.read()).toBe('silent');
  });

  it('is asked here where only this tablet answers for the workshop', async () => {
    vi.stubGlobal('fetch', vi.fn(answer({ 'x-known-at': '2026-11-26T08:05:00Z' })));
    expect(await askedHere(short)).toEqual(short);
  });

  it('looks nowhere where nothing is to be asked, or the silence is known', async () => {
    const fetched = vi.fn(answer());
    vi.stubGlobal('fetch', fetched);
    expect(await askedHere([])).toEqual([]);
    connection.write('silent');
    expect(await askedHere(short)).toEqual(short);
    expect(fetched).not.toHaveBeenCalled();
  });
});
