import { describe, expect, it } from 'vitest';
import { meantBy, questionOf } from './reading-question.ts';

const band = { targetGrams: '520', lowGrams: '509.6', highGrams: '530.4' };
const ask = (net: string, more: object = {}) =>
  questionOf({ net, band, isPart: false, lastTare: null, last: null, scale: null, ...more });

describe('a question about what the scale shows', () => {
  it('is not asked about what is wanted, nor about a plain pour too much', () => {
    expect(ask('520')).toBeNull();
    expect(ask('600')).toBeNull();
  });

  it('offers what was meant where the point slipped or the tare is in it', () => {
    const slipped = ask('52');
    expect(slipped?.code).toBe('reading-ten-times');
    expect(slipped && meantBy(slipped)).toBe('520');
    const gross = ask('640', { lastTare: '120' });
    expect(gross?.code).toBe('reading-tare-forgotten');
    expect(gross && meantBy(gross)).toBe('520');
  });

  it('asks about the same figure again only at the same place, or where it is not what is wanted', () => {
    expect(ask('520', { last: { grams: '520', isHere: false } })).toBeNull();
    expect(ask('600', { last: { grams: '600', isHere: false } })?.code).toBe('reading-same-as-last');
    expect(ask('260', { isPart: true, last: { grams: '260', isHere: true } })?.code).toBe(
      'reading-same-as-last',
    );
  });

  it('knows no slip of a part: nobody knows how much it was to be', () => {
    expect(ask('52', { isPart: true })).toBeNull();
  });

  it('has nothing to offer where it is only no step of the scale', () => {
    const odd = ask('520.05', { scale: { readabilityGrams: '0.1', capacityGrams: '2000' } });
    expect(odd?.code).toBe('reading-not-a-step');
    expect(odd && meantBy(odd)).toBeNull();
  });

  it('is asked about what the scale shows, with the vessel on it', () => {
    const scale = { readabilityGrams: '1', capacityGrams: '5000' };
    expect(ask('520', { gross: '5000', scale })).toBeNull();
    expect(ask('520', { gross: '5000.000001', scale })?.code).toBe('reading-above-capacity');
    expect(ask('520', { gross: '600.37', scale })?.code).toBe('reading-not-a-step');
    // A tare that was read off another scale.
    expect(ask('519.6', { gross: '600', scale })).toBeNull();
  });

  it('is not asked about what is no number', () => {
    expect(ask('5,2')).toBeNull();
  });
});
