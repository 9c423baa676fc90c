import { expect, it } from 'vitest';
import { expectBandsToMeet, expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { figureHeightSources, figureHeights } from './figure-heights-76-211.ts';

it('has the four heights 2, 3, 4 and 6 mm of Directive 76/211/EEC, Annex I 3.1', () => {
  expect(figureHeights.map((row) => row.minHeightMm)).toEqual([2, 3, 4, 6]);
  expect(figureHeights.map((row) => row.nominalGramsOrMl.upTo)).toEqual([50, 200, 1000, null]);
  expectBandsToMeet(figureHeights.map((row) => row.nominalGramsOrMl));
  expectSoundTable(figureHeights, figureHeightSources);
});
