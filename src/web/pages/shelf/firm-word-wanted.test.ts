import { describe, expect, it } from 'vitest';
import { firmWordWanted } from './firm-word-wanted.ts';

const base = {
  itemKind: 'formula',
  status: 'quarantine',
  firmFrom: '2027-02-01T09:00:00Z',
  keepUntil: '2027-05-01',
} as const;

describe('firmWordWanted', () => {
  it('waits for the word that a setting base is firm', () => {
    expect(firmWordWanted(base, '2027-02-02')).toBe('firm');
  });

  it('waits for nothing once it was said', () => {
    expect(firmWordWanted({ ...base, status: 'released' }, '2027-02-02')).toBeNull();
  });

  it('wants another look past the day until which it is kept, and not on that day', () => {
    const said = { ...base, status: 'released' } as const;
    expect(firmWordWanted(said, '2027-05-01')).toBeNull();
    expect(firmWordWanted(said, '2027-05-02')).toBe('looked-at');
  });

  it('asks nothing of what was bought, and nothing of what must not be used', () => {
    expect(firmWordWanted({ ...base, itemKind: 'material' }, '2027-02-02')).toBeNull();
    expect(firmWordWanted({ ...base, status: 'blocked' }, '2027-06-02')).toBeNull();
  });
});
