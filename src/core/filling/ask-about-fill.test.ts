import { describe, expect, it } from 'vitest';
import { askAboutFill, type FillReading, refuseEmptyFill } from './ask-about-fill.ts';

const TIN: FillReading = {
  grossGrams: '46.6',
  tareGrams: '11.4',
  declaredGrams: '35',
  aimGrams: '35.2',
  tinGrams: '11.4',
  readabilityGrams: '0.01',
  lastGrossGrams: null,
  refilledNetGrams: null,
};
const codesOf = (more: Partial<FillReading>) => askAboutFill({ ...TIN, ...more }).map(({ code }) => code);

describe('a tin on the scale is asked about', () => {
  it('not at all where it is near its aim, or a plain bit too light or heavy', () => {
    for (const grossGrams of ['46.6', '46.2', '30', '50', '70']) expect(codesOf({ grossGrams })).toEqual([]);
  });

  it('where it is the tin before it to the last digit', () => {
    expect(codesOf({ lastGrossGrams: '46.60' })).toEqual(['reading-same-as-last']);
    expect(codesOf({ lastGrossGrams: '46.61' })).toEqual([]);
  });

  it('not for being alike on a scale that has fewer than a thousand steps to the label', () => {
    expect(codesOf({ readabilityGrams: '0.1', lastGrossGrams: '46.6' })).toEqual([]);
    expect(codesOf({ readabilityGrams: '0.035', grossGrams: '46.55', lastGrossGrams: '46.55' })).toEqual([
      'reading-same-as-last',
    ]);
  });

  it('where it was filled up and holds no more than before', () => {
    expect(codesOf({ refilledNetGrams: '35.199999' })).toEqual([]);
    expect(codesOf({ refilledNetGrams: '35.2' })).toEqual(['refilled-not-heavier']);
    // Above the aim something was taken out of it again.
    expect(codesOf({ refilledNetGrams: '35.200001' })).toEqual([]);
    expect(codesOf({ refilledNetGrams: '40' })).toEqual([]);
  });

  it('where the scale was at nought with the tin on it: the reading itself is the aim', () => {
    expect(codesOf({ grossGrams: '35.4' })).toEqual(['scale-was-tared']);
    // A twentieth off the aim is 1.76 g: 33.44 g is asked about, 33.43 g is a plain light tin.
    expect(codesOf({ grossGrams: '33.44' })).toEqual(['scale-was-tared']);
    expect(codesOf({ grossGrams: '33.43' })).toEqual([]);
    expect(codesOf({ grossGrams: '35.4', tareGrams: '0', tinGrams: '0' })).toEqual([]);
  });

  it('where a point or a unit slipped with the tin in the figure', () => {
    expect(codesOf({ grossGrams: '466' })).toEqual(['reading-ten-times']);
    // 46.6 g are 1.644 avoirdupois ounces of 28.349523125 g: less than the empty tin, and no fill at all.
    expect(codesOf({ grossGrams: '1.65' })).toEqual(['reading-other-unit']);
  });

  it('where an empty weight of its own lies a tenth or more off what such tins weigh', () => {
    const own = (tareGrams: string, more: Partial<FillReading> = {}) =>
      codesOf({ tareGrams, grossGrams: String(Number(tareGrams) + 35.2), isTareOwn: true, ...more });
    expect(own('10.27')).toEqual([]);
    expect(own('10.26')).toEqual(['tare-unlike']);
    expect(own('12.54')).toEqual(['tare-unlike']);
    expect(own('6', { tinGrams: '0' })).toEqual([]);
  });

  it('where the tare was forgotten', () => {
    expect(codesOf({ tareGrams: '0' })).toEqual(['tare-forgotten']);
  });

  it('where the point slipped, the unit is another, or nothing explains it', () => {
    expect(codesOf({ grossGrams: '14.92' })).toEqual(['reading-ten-times']);
    expect(codesOf({ grossGrams: '12.64' })).toEqual(['reading-other-unit']);
    expect(codesOf({ grossGrams: '12.4' })).toEqual(['net-ten-times-off']);
  });

  it('above twice the label, and not exactly there', () => {
    expect(codesOf({ grossGrams: '81.4' })).toEqual([]);
    expect(codesOf({ grossGrams: '81.41' })).toEqual(['net-far-above-label']);
  });

  it('where the scale cannot show such a figure', () => {
    expect(codesOf({ grossGrams: '46.605' })).toEqual(['reading-not-a-step']);
  });
});

describe('a tin with less than nothing in it', () => {
  it('is refused from nought on', () => {
    expect(refuseEmptyFill({ ...TIN, grossGrams: '11.4' })).toMatchObject({ code: 'net-not-above-nought' });
    expect(refuseEmptyFill({ ...TIN, grossGrams: '11.400001' })).toBeNull();
  });
});
