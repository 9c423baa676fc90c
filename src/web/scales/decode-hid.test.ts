/**
 * Bytes built from the USB HID Point of Sale Usage Tables 1.02, section on weighing devices, as remembered: from memory,
 * check. No scale was at hand.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../core/quantity/index.ts';
import { decodeHidReport, type HidReport, layoutOf, USUAL_LAYOUT } from './decode-hid.ts';

const decode = (...bytes: number[]) => decodeHidReport(Uint8Array.from(bytes));

describe('a scale data report', () => {
  it('is settled grams: 250, step of one', () => {
    expect(decode(4, 2, 0, 250, 0)).toEqual({ grams: '250', isStable: true, trouble: null, told: null });
  });

  it('has its exponent as a signed byte: 1234 x 10^-1 ounces, exactly', () => {
    expect(decode(4, 11, 0xff, 0xd2, 0x04)).toEqual({
      grams: '3498.331153625',
      isStable: true,
      trouble: null,
      told: { value: '123.4', unit: 'oz' },
    });
  });

  it.each([
    [1, 'mg', '0.005'],
    [2, 'g', '5'],
    [3, 'kg', '5000'],
    [4, 'ct', '1'],
    [6, 'grain', '0.32399455'],
    [7, 'dwt', '7.7758692'],
    [8, 'tonne', '5000000'],
    [9, 'ton', '4535923.7'],
    [10, 'ozt', '155.517384'],
    [11, 'oz', '141.747615625'],
    [12, 'lb', '2267.96185'],
  ])('in unit %i (%s): 5 are %s g', (unit, _name, grams) => {
    expect(decode(4, unit, 0, 5, 0).grams).toBe(grams);
  });

  it('moves, stands at zero, or lies below it', () => {
    expect(decode(3, 2, 0, 80, 0)).toMatchObject({ grams: '80', isStable: false });
    expect(decode(2, 2, 0, 0, 0)).toMatchObject({ grams: '0', isStable: true });
    expect(decode(5, 2, 0xff, 7, 0)).toMatchObject({ grams: '-0.7', isStable: false });
  });

  it.each([
    [1, 'fault'],
    [6, 'over-limit'],
    [7, 'wants-calibration'],
    [8, 'wants-zero'],
    [0, 'not-understood'],
    [9, 'not-understood'],
  ])('of state %i gives no weight: %s', (status, trouble) => {
    expect(decode(status, 2, 0, 80, 0)).toMatchObject({ grams: null, isStable: false, trouble });
  });

  it('in taels, in no unit, or cut short gives no weight', () => {
    expect(decode(4, 5, 0, 80, 0).trouble).toBe('unit-unknown');
    expect(decode(4, 0, 0, 80, 0).trouble).toBe('unit-unknown');
    expect(decode(4, 13, 0, 80, 0).trouble).toBe('unit-unknown');
    expect(decode(4, 2, 0, 80).trouble).toBe('not-understood');
    expect(decode().trouble).toBe('not-understood');
  });

  it('tells what was put into it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 65_535 }), fc.integer({ min: -5, max: 3 }), (weight, scaling) => {
        const { grams } = decode(4, 2, scaling & 0xff, weight & 0xff, weight >> 8);
        expect(exact(grams ?? 'NaN').eq(exact(weight).times(exact(10).pow(scaling)))).toBe(true);
      }),
    );
  });
});

describe('the layout that a device tells', () => {
  const list = (id: number, logicalMinimum: number, reportSize: number) => ({
    reportSize,
    reportCount: 1,
    logicalMinimum,
    isRange: true,
    usages: [],
    usageMinimum: (0x8d << 16) | id,
  });
  const single = (id: number, logicalMinimum: number, reportSize: number) => ({
    ...list(0, logicalMinimum, reportSize),
    isRange: false,
    usages: [(0x8d << 16) | id],
  });

  it('is the usual one where the descriptor says that', () => {
    const usual: HidReport = {
      reportId: 3,
      items: [list(0x71, 1, 8), list(0x51, 1, 8), single(0x41, -128, 8), single(0x40, 0, 16)],
    };
    expect(layoutOf([{ reportId: 1, items: [] }, usual])).toEqual(USUAL_LAYOUT);
  });

  it('may count from nought, have another order and a wider weight', () => {
    const other: HidReport = {
      reportId: 7,
      items: [single(0x40, 0, 24), single(0x41, -128, 8), list(0x51, 0, 4), list(0x71, 0, 4)],
    };
    const layout = layoutOf([other]);
    expect(layout?.reportId).toBe(7);
    // 0x012345 x 10^-2, unit 1 (from nought: gram), state 3 (from nought: stable).
    expect(decodeHidReport(Uint8Array.from([0x45, 0x23, 0x01, 0xfe, 0x31]), layout)).toMatchObject({
      grams: '745.65',
      isStable: true,
    });
  });

  it('is none where there is no weight in it', () => {
    expect(layoutOf([{ reportId: 3, items: [single(0x41, -128, 8)] }])).toBeUndefined();
    expect(layoutOf([])).toBeUndefined();
  });
});
