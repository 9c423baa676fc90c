import { describe, expect, it } from 'vitest';
import { exact, sumOf } from '../../../core/quantity/index.ts';
import { firstScent, gramsWith, hasScent } from './scent-draft.ts';

const line = (itemName: string, grams: string) => ({
  stage: 'Whip',
  itemKind: 'material' as const,
  itemId: itemName,
  itemName,
  grams,
  percent: '',
});
const lines = [line('base', '985'), line('orange', '9'), line('cedar', '6')];
const oils = [{ line: 1 }, { line: 2 }];

describe('a scent as it is typed', () => {
  it('begins with what is scent, in the proportions of the recipe', () => {
    const first = firstScent(lines, (one) => one.itemName !== 'base');
    expect(first.oils.map(({ isScent, part }) => [isScent, part])).toEqual([
      [false, '985'],
      [true, '9'],
      [true, '6'],
    ]);
    expect(hasScent(first)).toBe(true);
    expect(hasScent(firstScent(lines, () => false))).toBe(false);
  });
});

describe('the recipe with the scent that was found', () => {
  it('weighs what it weighed before, each oil rounded down to a hundredth of a gram', () => {
    // One percent and two thirds of a percent of 1 000 g, as twelve places give it.
    expect(gramsWith(lines, oils, ['1', '0.666666666666'])).toEqual(['983.34', '10', '6.66']);
  });

  it('is rounded to the step of the scale that was chosen', () => {
    expect(gramsWith(lines, oils, ['1', '0.666666666666'], '0.5')).toEqual(['983.5', '10', '6.5']);
  });

  it('keeps the other lines in their proportions, and the heaviest takes what is left over', () => {
    const four = [line('butter', '601.7'), line('wax', '200.15'), line('oil', '190'), line('scent', '8.15')];
    const grams = gramsWith(four, [{ line: 3 }], ['1.777777777777']);
    // 982.23 g are left for what was 991.85 g.
    expect(grams).toEqual(['595.88', '198.2', '188.15', '17.77']);
    expect(sumOf(grams).eq('1000')).toBe(true);
  });

  it('never writes more of an oil than was found, nor another whole, however odd the figures', () => {
    const odd = [line('base', '701.234567'), line('orange', '9.000001'), line('cedar', '0.7')];
    const percents = ['0.000412', '1.299999999999'];
    const grams = gramsWith(odd, oils, percents);
    const whole = sumOf(odd.map((one) => one.grams));
    expect(sumOf(grams).eq(whole)).toBe(true);
    for (const [place, percent] of percents.entries())
      expect(
        exact(grams[place + 1] ?? '0')
          .times(100)
          .lte(whole.times(percent)),
      ).toBe(true);
    // Finer than the step where the step would leave nothing of it.
    expect(exact(grams[1] ?? '0').gt(0)).toBe(true);
  });
});
