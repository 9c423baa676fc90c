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

  it('knows a postcode in small letters', () => {
    expect(placeOfAddress('1 Mill Lane, Testham, tt1 2ab')).toBe('GB');
    expect(placeOfAddress('1 Mill Lane, Testham, bt99 9zz')).toBe('NI');
  });

  it('knows member states by their names there and in English', () => {
    expect(placeOfAddress('4 Harbour Lane, Ballymoyle, D99 X9Y9, Ireland')).toBe('EU');
    expect(placeOfAddress('Voorbeeldkade 12, 1234 AB Voorbeeldstad, Netherlands')).toBe('EU');
    expect(placeOfAddress('Musterweg 3, 99999 Musterstadt, Deutschland')).toBe('EU');
    expect(placeOfAddress('8 England Street, Ballymoyle, Ireland')).toBe('EU');
    expect(placeOfAddress('3 Quay, Testport, Republic of Ireland.')).toBe('EU');
  });

  it('knows that another country is neither', () => {
    expect(placeOfAddress('12 Main St, Akron, OH 44999, USA')).toBe('elsewhere');
    expect(placeOfAddress('Exempelveien 4, 9999 Eksempelvik, Norway')).toBe('elsewhere');
    expect(placeOfAddress('Musterweg 3, 9999 Musterdorf, Schweiz')).toBe('elsewhere');
  });

  it('does not guess', () => {
    expect(placeOfAddress('4 Harbour Lane, Ballymoyle')).toBe('unknown');
    expect(placeOfAddress('12 Main St, Akron, OH 44999')).toBe('unknown');
    expect(placeOfAddress('')).toBe('unknown');
  });
});
