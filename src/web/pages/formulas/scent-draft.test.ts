import { describe, expect, it } from 'vitest';
import { firstScent, gramsWith, oilsOf } from './scent-draft.ts';

const line = (itemName: string, grams: string) => ({
  stage: 'Whip',
  itemKind: 'material' as const,
  itemId: itemName,
  itemName,
  grams,
  percent: '',
});
const lines = [line('base', '985'), line('orange', '9'), line('cedar', '6')];
const first = firstScent(lines, (one) => one.itemName !== 'base');

describe('a scent as it is typed', () => {
  it('begins with what is scent, in the proportions of the recipe', () => {
    expect(oilsOf(first)).toEqual([
      { line: 1, share: '9' },
      { line: 2, share: '6' },
    ]);
  });

  it('is free from nothing to all where no range is typed, and within the range where one is', () => {
    const [base, orange, cedar] = first.oils;
    if (!base || !orange || !cedar) throw new Error('three lines');
    const oils = [base, { ...orange, least: '20', most: '62.5' }, cedar];
    expect(oilsOf({ ...first, isFree: true, oils })).toEqual([
      { line: 1, share: ['0.2', '0.625'] },
      { line: 2, share: ['0', '1'] },
    ]);
  });

  it('counts what cannot be read as nothing', () => {
    const oils = first.oils.map((oil) => ({ ...oil, part: '1,5' }));
    expect(oilsOf({ ...first, oils })).toEqual([
      { line: 1, share: '0' },
      { line: 2, share: '0' },
    ]);
  });

  it('turns percents into grams beside the rest as it stands, down to the microgram', () => {
    // 985 g are 98 %: 1.5 % are 15.076530... g.
    expect(gramsWith(lines, [{ line: 1 }, { line: 2 }], ['1.5', '0.5'])).toEqual([
      '985',
      '15.07653',
      '5.02551',
    ]);
  });
});
