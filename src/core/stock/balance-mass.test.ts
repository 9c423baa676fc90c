import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { balanceMass } from './balance-mass.ts';

const balance = (
  received: number | string,
  used: (number | string)[],
  onHand: number | string = 0,
  waste = '0',
) => balanceMass({ receivedGrams: received, usedGrams: used, onHandGrams: onHand, wasteGrams: waste });

describe('mass balance', () => {
  it('accounts for what was used, what is here and what was thrown away', () => {
    const { accountedGrams, unexplainedGrams, percent, verdict } = must(balance(1000, [300, 200], 490, '5'));
    expect([accountedGrams, unexplainedGrams, percent].map(Number)).toEqual([995, 5, 99.5]);
    expect(verdict).toBe('within');
  });

  it('is within at exactly 98 and 102 percent, and not a microgram further', () => {
    const verdictOf = (used: string) => must(balance('300', [used])).verdict;
    expect(verdictOf('294')).toBe('within');
    expect(verdictOf('293.999999')).toBe('look');
    expect(verdictOf('306')).toBe('within');
    expect(verdictOf('306.000001')).toBe('look');
  });

  it('shows more found than came in as less than nothing unexplained', () => {
    expect(must(balance(100, [60], 41)).unexplainedGrams.toFixed()).toBe('-1');
  });

  it('takes a lot that nobody used as a whole on hand', () => {
    expect(must(balance(250, [], 250)).verdict).toBe('within');
  });

  it('refuses a receipt of nought and masses below nothing', () => {
    expect(balance(0, [])).toMatchObject({ problems: [{ code: 'mass-zero', where: 'receivedGrams' }] });
    expect(balance(-1, [1, -1], -2, '-3')).toMatchObject({
      problems: [
        { code: 'mass-negative', where: 'receivedGrams' },
        { code: 'mass-negative', where: 'usedGrams[1]' },
        { code: 'mass-negative', where: 'onHandGrams' },
        { code: 'mass-negative', where: 'wasteGrams' },
      ],
    });
  });
});
