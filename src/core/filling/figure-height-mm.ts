import { done, problem, type Result, refused } from '../problem.ts';
import { type ExactInput, exact } from '../quantity/index.ts';
import { findBand } from './find-band.ts';
import type { FigureHeightBand } from './net-contents-tables.ts';

/**
 * Smallest height of the figures of the declared quantity, in millimetres: 2 up to and with 50 g or ml, 3 up to 200,
 * 4 up to 1000, 6 above. Source: Directive 76/211/EEC, Annex I 3.1.
 */
export function findFigureHeightMm(
  nominal: ExactInput,
  heights: readonly FigureHeightBand[],
  where = 'nominal',
): Result<number> {
  const row = findBand(heights, ({ nominalGramsOrMl }) => nominalGramsOrMl, nominal);
  return row === undefined
    ? refused(problem('value-not-above', where, { found: exact(nominal).toFixed(), allowed: 0 }))
    : done(row.minHeightMm);
}
