import { describe, expect, it } from 'vitest';
import type { orders } from '../../contract/index.ts';
import { toText } from '../../core/quantity/index.ts';
import type { ScaleRow } from '../../storage/index.ts';
import { findTinAim } from './read-tins.ts';

/** Class III, e = 0.1 g: 1 e up to 50 g, 2 e up to 200 g in service (OIML R 76-1 table 6), and 0.1 g of rounding. */
const scale: ScaleRow = {
  id: 's',
  name: 'Classed scale',
  capacity_grams: '600',
  readability_grams: '0.1',
  repeatability_grams: null,
  accuracy_class: 'III',
  verification_interval_grams: '0.1',
  check_weight_grams: null,
  check_tolerance_grams: null,
  repeatability_at: null,
  version: 1,
};
const details = { declaredGrams: '35', aimGrams: null } as unknown as orders.ProductDetails;

describe('the aim of a tin in a plan', () => {
  it('counts the error of the scale at the load with the tin', () => {
    expect(toText(findTinAim(details, '15', [scale])), 'just 50 g').toBe('35.2');
    expect(toText(findTinAim(details, '15.000001', [scale])), 'a microgram above').toBe('35.3');
  });
});
