import { describe, expect, it } from 'vitest';
import { toText } from '../quantity/index.ts';
import { type BandWanted, findBandAround } from './find-band.ts';

const bandOf = (wanted: BandWanted) => {
  const { lowGrams, highGrams } = findBandAround(wanted);
  return [toText(lowGrams), toText(highGrams)];
};

describe('the band of a target', () => {
  it('lies around it, exactly', () => {
    expect(bandOf({ targetGrams: '520', toleranceGrams: '10.4' })).toEqual(['509.6', '530.4']);
    expect(bandOf({ targetGrams: '0.3', toleranceGrams: '0.1' })).toEqual(['0.2', '0.4']);
  });

  it('never reaches below nought', () => {
    expect(bandOf({ targetGrams: '0.3', toleranceGrams: '0.5' })).toEqual(['0', '0.8']);
  });

  it('ends where a limit does', () => {
    expect(bandOf({ targetGrams: '1', toleranceGrams: '0.02', mostGrams: '1.01' })).toEqual(['0.98', '1.01']);
    expect(bandOf({ targetGrams: '1', toleranceGrams: '0.02', mostGrams: '1.5' })).toEqual(['0.98', '1.02']);
  });
});
