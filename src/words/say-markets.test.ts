import { describe, expect, it } from 'vitest';
import { say } from './say.ts';
import { sayMarkets } from './say-markets.ts';

describe('markets in a sentence', () => {
  it('are written out', () => {
    expect(sayMarkets('GB')).toBe('Great Britain');
    expect(sayMarkets('GB, NI')).toBe('Great Britain and Northern Ireland');
    expect(sayMarkets('GB, NI, EU')).toBe('Great Britain, Northern Ireland and the European Union');
    expect(sayMarkets('US')).toBe('the United States');
  });

  it('are written out wherever a sentence names them', () => {
    expect(say({ code: 'sale-report-missing', parameters: { markets: 'NI' } })).toContain('Northern Ireland');
    expect(say({ code: 'check-label-complete', parameters: { market: 'GB' } })).toContain('Great Britain');
  });

  it('leave alone what is no list of markets', () => {
    expect(sayMarkets('')).toBe('');
    expect(sayMarkets('a market stall')).toBe('a market stall');
    expect(sayMarkets('GB, a stall')).toBe('GB, a stall');
  });
});
