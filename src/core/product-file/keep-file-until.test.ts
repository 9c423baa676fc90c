import { describe, expect, it } from 'vitest';
import { keepFileUntil, mustKeep } from './keep-file-until.ts';

const keep = (lastReleasedOn: string | null, lastSentOn: string | null) =>
  keepFileUntil({ lastReleasedOn, lastSentOn }, 10);

describe('keepFileUntil', () => {
  it('counts ten years from the last dispatch', () => {
    expect(keep('2026-11-01', '2026-11-26')).toEqual({ until: '2036-11-26', from: '2026-11-26', by: 'sent' });
  });

  it('counts from the last release where nothing went after it, or nothing at all', () => {
    expect(keep('2026-11-27', '2026-11-26')).toMatchObject({ until: '2036-11-27', by: 'released' });
    expect(keep('2026-11-27', null)).toMatchObject({ until: '2036-11-27', by: 'released' });
  });

  it('says the dispatch where both were on one day', () => {
    expect(keep('2026-11-26', '2026-11-26')?.by).toBe('sent');
  });

  it('ends with the last of February where the year has no 29th', () => {
    expect(keep(null, '2028-02-29')?.until).toBe('2038-02-28');
  });

  it('knows no end before anything was placed on the market', () => {
    expect(keep(null, null)).toBeNull();
  });
});

describe('mustKeep', () => {
  it('keeps it on the last day and not on the day after', () => {
    const until = keep(null, '2026-11-26');
    expect(until && mustKeep(until, '2036-11-26')).toBe(true);
    expect(until && mustKeep(until, '2036-11-27')).toBe(false);
  });
});
