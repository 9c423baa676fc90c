import { expect, it } from 'vitest';
import { checkWeights } from '../../reference/index.ts';
import { proposeCheckWeights } from './propose-check-weights.ts';

const NOMINAL = checkWeights.map(({ nominalGrams }) => nominalGrams);

it.each([
  [200, [], [100]],
  [5000, [], [2000]],
  [2000, ['520', '310', '2'], [1000, 200]],
  [200, ['99', '101'], [100]],
  [200, ['4.2', '5', '3.9'], [100, 5]],
  ['0.05', [], []],
])('a scale that holds %s g, used for %j g, is checked with %j g', (capacity, weighed, proposed) => {
  expect(proposeCheckWeights(capacity, weighed, NOMINAL)).toEqual(proposed);
});

it('never proposes what the scale does not hold', () => {
  expect(proposeCheckWeights(100, ['180'], NOMINAL)).toEqual([50, 100]);
  expect(proposeCheckWeights('99.9', ['180'], NOMINAL)).toEqual([50]);
});
