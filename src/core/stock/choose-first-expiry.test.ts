import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact, sumOf } from '../quantity/index.ts';
import { chooseFirstExpiry, type LotToUse } from './choose-first-expiry.ts';

const lot = (name: string, quantity: string, rest: Partial<LotToUse> = {}): LotToUse => ({
  lot: name,
  quantity,
  bestBefore: '2027-06-30',
  received: '2026-01-10',
  status: 'released',
  ...rest,
});
const issued = (lots: readonly LotToUse[], need: string, day = '2026-11-26') =>
  must(chooseFirstExpiry(lots, need, day)).issue.map(
    ({ lot: name, quantity }) => `${name} ${quantity.toFixed()}`,
  );

describe('first expired, first out', () => {
  it('takes the nearest date first and splits over lots', () => {
    const lots = [lot('late', '900', { bestBefore: '2028-01-31' }), lot('near', '120.5')];
    expect(issued(lots, '200')).toEqual(['near 120.5', 'late 79.5']);
  });

  it('takes the earlier receipt where dates are equal, and the order given where that is equal too', () => {
    const lots = [lot('a', '1', { received: '2026-05-01' }), lot('b', '1'), lot('c', '1')];
    expect(issued(lots, '3')).toEqual(['b 1', 'c 1', 'a 1']);
  });

  it('takes a lot without a date after those with one', () => {
    const lots = [lot('found', '50', { bestBefore: null, received: null }), lot('dated', '10')];
    expect(issued(lots, '20')).toEqual(['dated 10', 'found 10']);
  });

  it('uses a lot on its own date and not the day after', () => {
    expect(issued([lot('a', '5')], '5', '2027-06-30')).toEqual(['a 5']);
    const late = must(chooseFirstExpiry([lot('a', '5')], '5', '2027-07-01'));
    expect(late.issue).toEqual([]);
    expect(late.short.toFixed()).toBe('5');
    expect(late.passedOver).toEqual([{ lot: 'a', why: 'expired' }]);
  });

  it('takes released lots only', () => {
    const lots = (['quarantine', 'rejected', 'blocked'] as const).map((status) =>
      lot(status, '9', { status }),
    );
    const choice = must(chooseFirstExpiry(lots, 1, '2026-11-26'));
    expect(choice.issue).toEqual([]);
    expect(choice.passedOver.map(({ why }) => why)).toEqual(['not-released', 'not-released', 'not-released']);
  });

  it('issues nothing where nothing is needed, and nothing of an empty lot', () => {
    expect(issued([lot('a', '5')], '0')).toEqual([]);
    expect(issued([lot('empty', '0'), lot('full', '5')], '1')).toEqual(['full 1']);
  });

  it('never takes more than a lot has, and issue and short are the need', () => {
    const quantity = fc.integer({ min: 0, max: 10_000_000 }).map((each) => exact(each).div(1000).toFixed());
    const day = fc.integer({ min: 1, max: 28 }).map((each) => `2026-12-${String(each).padStart(2, '0')}`);
    const lots = fc
      .array(fc.record({ quantity, bestBefore: fc.option(day), received: fc.option(day) }), { maxLength: 12 })
      .map((rows) => rows.map((row, index) => lot(String(index), row.quantity, row)));
    fc.assert(
      fc.property(lots, quantity, day, (given, need, useDate) => {
        const { issue, short } = must(chooseFirstExpiry(given, need, useDate));
        expect(
          sumOf(issue.map((each) => each.quantity))
            .plus(short)
            .eq(need),
        ).toBe(true);
        for (const { lot: name, quantity: taken } of issue) {
          const source = given.find((each) => each.lot === name);
          expect(taken.lte(source?.quantity ?? 0)).toBe(true);
          expect(source?.bestBefore === null || (source?.bestBefore ?? '') >= useDate).toBe(true);
        }
      }),
    );
  });

  it('refuses less than nothing, and a lot that is listed twice', () => {
    expect(chooseFirstExpiry([lot('a', '-1')], '-2', '2026-11-26')).toMatchObject({
      problems: [
        { code: 'value-too-small', where: 'need' },
        { code: 'value-too-small', where: 'lots[0].quantity' },
      ],
    });
    expect(chooseFirstExpiry([lot('a', '1'), lot('a', '1')], '2', '2026-11-26')).toMatchObject({
      problems: [{ code: 'lot-listed-twice', where: 'lots[1].lot', found: 'a' }],
    });
  });
});
