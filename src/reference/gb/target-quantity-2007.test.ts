import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { targetQuantityRules, targetQuantitySources } from './target-quantity-2007.ts';

it('has the rules A, B and C, from memory', () => {
  expectSoundTable(targetQuantityRules, targetQuantitySources);
  const lettered = targetQuantityRules.filter((row) => row.rule !== undefined);
  expect(lettered.map(({ rule }) => rule)).toEqual(['A', 'B', 'C']);
  expect(lettered.every(({ confidence }) => confidence === 'memory')).toBe(true);
});
