import { describe, expect, it } from 'vitest';
import { netContentsTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { type AimWish, adviseAim } from './advise-aim.ts';

const BARE: AimWish = {
  declaredGrams: '35',
  basis: 'minimum',
  spreadGrams: null,
  tareSpreadGrams: null,
  errorGrams: '0.01',
  readabilityGrams: '0.01',
};
const advise = (wish: Partial<AimWish>) => must(adviseAim({ ...BARE, ...wish }, netContentsTables));

describe('what to aim at', () => {
  it('by the minimum way lies so far above label and error that 39 tins in 40 are right at once', () => {
    // z(0.975) = 1.959964 (normal tables): 35.01 + 0.1959964, taken up to a hundredth.
    const advice = advise({ spreadGrams: '0.1' });
    expect(advice).toMatchObject({ decidedBy: 'coverage' });
    expect([advice.aimGrams.toFixed(), advice.giveawayGrams.toFixed()]).toEqual(['35.21', '0.21']);
  });

  it('tells how many are short, and what a little less would save and cost', () => {
    const { shortShare, lower } = advise({ spreadGrams: '0.1' });
    // Two and one standard deviations below: 0.02275 and 0.15866 in normal tables.
    expect(shortShare).toBeCloseTo(0.02275, 5);
    expect(lower?.byGrams.toFixed()).toBe('0.1');
    expect(lower?.shortShare).toBeCloseTo(0.15866, 5);
  });

  it('by the average way is the target of packers’ rules with the error on top', () => {
    // The worked figure of target-fill: 100 g with 2.5 g of spread asks for 100.5 g.
    const wish = { declaredGrams: '100', basis: 'average', errorGrams: '0.02' } as const;
    const advice = advise({ ...wish, spreadGrams: '2.5' });
    expect([advice.aimGrams.toFixed(), advice.decidedBy]).toEqual(['100.52', 'limit-1']);
    // Of fill and tare together: the root of 1.5 squared and 2 squared is 2.5.
    const both = advise({ ...wish, spreadGrams: '1.5', tareSpreadGrams: '2' });
    expect(both.aimGrams.toFixed()).toBe('100.52');
  });

  it('without a spread is the label and the error alone', () => {
    const advice = advise({});
    expect(advice).toMatchObject({ decidedBy: 'scale', shortShare: null, lower: null });
    expect(advice.aimGrams.toFixed()).toBe('35.01');
  });

  it('of a hand that never spreads lies on label and error, and a step lower is short every time', () => {
    const { aimGrams, shortShare, lower } = advise({ spreadGrams: '0' });
    expect([aimGrams.toFixed(), shortShare, lower?.shortShare]).toEqual(['35.01', 0, 1]);
  });

  it('below 5 g is that of the minimum way, since no tin may be short there', () => {
    expect(advise({ declaredGrams: '4', basis: 'average', spreadGrams: '0.1' }).decidedBy).toBe('coverage');
  });

  it('of nothing is refused', () => {
    expect(adviseAim({ ...BARE, declaredGrams: '0' }, netContentsTables)).toMatchObject({ ok: false });
  });
});
