import { describe, expect, it } from 'vitest';
import { placeOfAddress } from './place-of-address.ts';

describe('where an address lies', () => {
  it('knows Great Britain by postcode or country', () => {
    expect(placeOfAddress('3 Mill Steps, Wendle Cross WX4 7ZZ')).toBe('GB');
    expect(placeOfAddress('3 Mill Steps, Wendle Cross, England')).toBe('GB');
    expect(placeOfAddress('3 Mill Steps\nWendle Cross\nUnited Kingdom')).toBe('GB');
  });

  it('knows Northern Ireland, whatever stands after it', () => {
    expect(placeOfAddress('9 Quay Terrace, Ballymoyle BT99 9ZZ')).toBe('NI');
    expect(placeOfAddress('9 Quay Terrace, Ballymoyle, Northern Ireland')).toBe('NI');
    expect(placeOfAddress('9 Quay Terrace, Ballymoyle BT99 9ZZ, United Kingdom')).toBe('NI');
  });

  it('does not guess at others', () => {
    expect(placeOfAddress('4 Harbour Lane, Ballymoyle, D99 X9Y9, Ireland')).toBe('unknown');
    expect(placeOfAddress('Voorbeeldkade 12, 1234 AB Voorbeeldstad, Netherlands')).toBe('unknown');
    expect(placeOfAddress('8 England Street, Ballymoyle, Ireland')).toBe('unknown');
    expect(placeOfAddress('')).toBe('unknown');
  });
});
