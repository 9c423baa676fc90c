import { describe, expect, it } from 'vitest';
import { writeDay } from './write-day.ts';

describe('writeDay', () => {
  it('writes a day and a month out', () => {
    expect(writeDay('2027-05-09')).toBe('9 May 2027');
    expect(writeDay('2027-12')).toBe('December 2027');
  });

  it('leaves what is no date as it is', () => {
    for (const text of ['not known', '2027-13', '2027-00-01', '']) expect(writeDay(text)).toBe(text);
  });
});
