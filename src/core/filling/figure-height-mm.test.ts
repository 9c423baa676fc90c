import { expect, it } from 'vitest';
import { netContentsTables } from '../../catalogue/index.ts';
import { findFigureHeightMm } from './figure-height-mm.ts';

// Directive 76/211/EEC, Annex I 3.1; each edge belongs to the smaller height.
it.each([
  [1, 2],
  [50, 2],
  [50.1, 3],
  [200, 3],
  [200.1, 4],
  [1000, 4],
  [1000.1, 6],
])('figures for %f g are %i mm high', (nominal, height) => {
  expect(findFigureHeightMm(nominal, netContentsTables.figureHeights)).toEqual({ ok: true, value: height });
});

it('refuses a content of nothing', () => {
  const found = findFigureHeightMm(0, netContentsTables.figureHeights);
  expect(found).toMatchObject({ ok: false, problems: [{ code: 'value-not-above', where: 'nominal' }] });
});
