import { describe, expect, it } from 'vitest';
import { listWays } from './list-ways.ts';

const at = '2026-11-26T10:03:00.000Z';
const instead = { entryId: 'e', what: { code: 'claim-step', parameters: {} }, by: 'Ada Quill', at };

describe('the ways out of a claim', () => {
  it('are to enter it or to set it aside, where nothing stands there', () => {
    expect(listWays({ mayEnter: { instead: null, isBesides: true, likelyAt: null } })).toEqual([
      'enter',
      'aside',
    ]);
  });

  it('begin with setting it aside where something stands there: most often it is the same', () => {
    expect(listWays({ mayEnter: { instead, isBesides: true, likelyAt: null } })).toEqual([
      'aside',
      'instead',
      'besides',
    ]);
    expect(listWays({ mayEnter: { instead, isBesides: false, likelyAt: null } })).toEqual([
      'aside',
      'instead',
    ]);
  });

  it('are to set it aside only, where what it was about is closed or gone', () => {
    expect(listWays({ mayEnter: null })).toEqual(['aside']);
  });
});
