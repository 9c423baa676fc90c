import { describe, expect, it } from 'vitest';
import { lotInWords } from './lot-in-words.ts';

const lot = {
  onHand: '412.5',
  unit: 'g',
  itemName: 'Meadowfoam oil',
  status: 'released',
  isExpired: false,
  bestBefore: '2027-01-31',
  firmFrom: null,
} as const;

describe('lotInWords', () => {
  it('says that a released lot may be used', () => {
    expect(lotInWords(lot)).toBe('412.5\u00a0g of Meadowfoam oil, and it may be used.');
  });

  it('says of a lot past its date that it is not to be used, released or not', () => {
    expect(lotInWords({ ...lot, isExpired: true })).toContain('past its date of 31 January 2027');
    expect(lotInWords({ ...lot, isExpired: true, status: 'blocked' })).toContain('is blocked');
  });

  it('says of a base that sets what it waits for', () => {
    const base = { ...lot, status: 'quarantine', firmFrom: '2027-01-31T09:00:00Z' } as const;
    expect(lotInWords(base)).toContain('is setting');
    expect(lotInWords({ ...base, firmFrom: null })).toContain('in quarantine');
  });

  it('says nothing else of a lot that is used up', () => {
    expect(lotInWords({ ...lot, onHand: '0', status: 'quarantine' })).toBe(
      'Nothing is left of this lot of Meadowfoam oil.',
    );
  });
});
