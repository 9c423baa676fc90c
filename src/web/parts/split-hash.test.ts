import { describe, expect, it } from 'vitest';
import { splitHash } from './split-hash.ts';

describe('an address', () => {
  it('is a page and the part of the page that it names', () => {
    expect(splitHash('/#buy')).toEqual({ to: '/', hash: 'buy' });
    expect(splitHash('/workshop#people')).toEqual({ to: '/workshop', hash: 'people' });
  });

  it('is a page alone where it names no part', () => {
    expect(splitHash('/making/new?product=p1')).toEqual({ to: '/making/new?product=p1' });
  });
});
