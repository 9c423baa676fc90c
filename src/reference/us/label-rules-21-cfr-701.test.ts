import { expect, it } from 'vitest';
import { expectBandsToMeet, expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { usLabelRuleSources, usLabelRules, usPanelFigureHeights } from './label-rules-21-cfr-701.ts';

it('has 24 rules of the United States, three of them on where ingredients may stand', () => {
  expect(usLabelRules).toHaveLength(24);
  expect([...new Set(usLabelRules.flatMap(({ markets }) => markets))]).toEqual(['US']);
  expectSoundTable(usLabelRules, usLabelRuleSources);
});

it('asks for higher type on larger panels', () => {
  expectSoundTable(usPanelFigureHeights, usLabelRuleSources);
  expectBandsToMeet(usPanelFigureHeights.map((row) => row.panelSquareInch));
  const heights = usPanelFigureHeights.map((row) => row.minHeightInch);
  expect(heights).toEqual([...heights].sort((a, b) => a - b));
});
