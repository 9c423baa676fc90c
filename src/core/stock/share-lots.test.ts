import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, sumOf, toText } from '../quantity/index.ts';
import { type LotUse, shareLots } from './share-lots.ts';

const use = (usedLot: string, madeLot: string, quantity: string): LotUse => ({ usedLot, madeLot, quantity });
const textOf = (amounts: ReturnType<typeof shareLots>) =>
  Object.fromEntries([...amounts].map(([lot, amount]) => [lot, toText(amount.toDecimalPlaces(6))]));

describe('how much of a lot is in what was made of it', () => {
  it('is what was used, one step away', () => {
    expect(textOf(shareLots('tins', [use('bowl', 'tins', '180')], new Map()))).toEqual({ bowl: '180' });
  });

  it('is the part of a base that was used, times what went into the base', () => {
    // By hand: 180 of 200 g of the bowl, so 90 % of the 100 g of base; 90 of 500 g of base, so 18 % of 400 g of oil.
    const uses = [use('bowl', 'tins', '180'), use('base', 'bowl', '100'), use('oil', 'base', '400')];
    const made = new Map([
      ['bowl', '200'],
      ['base', '500'],
    ]);
    expect(textOf(shareLots('tins', uses, made))).toEqual({ bowl: '180', base: '90', oil: '72' });
  });

  it('adds up what came by two ways', () => {
    const uses = [use('bowl', 'tins', '100'), use('base', 'bowl', '50'), use('oil', 'base', '50')];
    const both = [...uses, use('oil', 'bowl', '10')];
    const made = new Map([
      ['bowl', '100'],
      ['base', '100'],
    ]);
    expect(textOf(shareLots('tins', both, made)).oil).toBe('35');
  });

  it('is not given where nobody knows how much came in between', () => {
    const uses = [use('bowl', 'tins', '100'), use('oil', 'bowl', '10')];
    expect(textOf(shareLots('tins', uses, new Map([['bowl', '0']])))).toEqual({ bowl: '100' });
  });

  it('shares a lot out without loss: the parts of all tins are what went in', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 1_000_000 }), { minLength: 1, maxLength: 6 }),
        (fills) => {
          const bowl = fills.reduce((sum, fill) => sum + fill, 0);
          const parts = fills.map((fill) => {
            const uses = [use('bowl', 'tins', String(fill)), use('oil', 'bowl', '12.5')];
            return shareLots('tins', uses, new Map([['bowl', bowl]])).get('oil') ?? exact(0);
          });
          expect(sumOf(parts).minus('12.5').abs().lt('1e-20')).toBe(true);
        },
      ),
    );
  });
});
