import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, sumOf } from '../quantity/index.ts';
import { sharePennies } from './share-pennies.ts';

const shown = (...parts: (string | null)[]) => {
  const shared = sharePennies(parts);
  return [shared.total.toFixed(2), ...shared.parts.map((part) => part?.toFixed(2) ?? null)];
};

describe('money as it is shown', () => {
  it('adds up in its lines to what stands below them', () => {
    // Rounded one by one these would be 3.33 + 3.33 + 2.23 = 8.89 below a total of 8.90.
    expect(shown('3.334', '3.334', '2.234')).toEqual(['8.90', '3.34', '3.33', '2.23']);
    expect(shown('1.006', '1.006', '1.006')).toEqual(['3.02', '1.01', '1.01', '1.00']);
  });

  it('leaves whole pennies as they are, and what is unknown unknown', () => {
    expect(shown('2.50', null, '0.75')).toEqual(['3.25', '2.50', null, '0.75']);
    expect(shown()).toEqual(['0.00']);
    expect(shown(null)).toEqual(['0.00', null]);
  });

  it('always: the sum of the lines is the total, and no line is a penny off', () => {
    const money = fc.integer({ min: 0, max: 900_000_000 }).map((each) => exact(each).div(1e6));
    fc.assert(
      fc.property(fc.array(fc.option(money), { maxLength: 20 }), (parts) => {
        const shared = sharePennies(parts);
        expect(sumOf(shared.parts.filter((part) => part !== null)).eq(shared.total)).toBe(true);
        for (const [index, part] of parts.entries()) {
          const line = shared.parts[index] ?? null;
          expect(part === null ? line === null : line?.minus(part).abs().lt('0.01')).toBe(true);
        }
        const all = sumOf(parts.filter((part) => part !== null));
        expect(all.minus(shared.total).abs().lte('0.005')).toBe(true);
      }),
    );
  });
});
