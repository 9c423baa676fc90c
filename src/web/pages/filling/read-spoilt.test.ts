import { describe, expect, it } from 'vitest';
import { readSpoilt } from './read-spoilt.ts';

describe('what was spoilt', () => {
  it('is counted as typed, with spaces between thousands', () => {
    expect(readSpoilt({ tins: '2', lids: '0', labels: '1 000' })).toEqual({
      ok: true,
      value: {
        spoiltTins: 2,
        spoiltLids: 0,
        spoiltLabels: 1000,
        backTins: null,
        backLids: null,
        backLabels: null,
      },
    });
  });

  it('is asked for where a field was emptied or is no whole number, each field by itself', () => {
    expect(readSpoilt({ tins: '', lids: '1.5', labels: '-1' })).toMatchObject({
      ok: false,
      problems: [
        { code: 'count-missing', where: 'spoiltTins' },
        { code: 'not-a-whole-number', where: 'spoiltLids' },
        { code: 'count-negative', where: 'spoiltLabels' },
      ],
    });
  });
});
