import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { labelRuleSources, labelRules } from './label-rules-1223-2009.ts';

it('has 60 rules of the EU, Northern Ireland and Great Britain', () => {
  expect(labelRules).toHaveLength(60);
  expect(labelRules.flatMap(({ markets }) => markets)).not.toContain('US');
  expectSoundTable(labelRules, labelRuleSources);
});

it('has ten headings in part A, four in part B and five parts of the product file', () => {
  const numbered = (element: string): number =>
    labelRules.filter((row) => row.element === element && row.number !== undefined).length;
  expect(numbered('safety-report-part-a')).toBe(10);
  expect(numbered('safety-report-part-b')).toBe(4);
  expect(numbered('product-information-file')).toBe(5);
});

it('names each element of Article 19 in its order', () => {
  const ordered = labelRules.flatMap((row) => (row.order === undefined ? [] : [row.order]));
  expect([...new Set(ordered)].sort()).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
});
