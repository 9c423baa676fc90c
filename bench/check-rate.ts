import { boundSafetyTables } from '../src/catalogue/index.ts';
import { expandFormula, rollUpContributions } from '../src/core/formula/index.ts';
import { must } from '../src/core/problem.ts';
import { type CompositionAnswer, checkComposition } from '../src/core/safety/index.ts';
import { butterLookup, butterMaterials, butterReport } from './full-butter.ts';
import { type Figure, ratePerSecond } from './measure.ts';

/** From the lines to the answer for Great Britain and Northern Ireland: what the app does between reading and showing. */
function checkButter(): CompositionAnswer {
  const expanded = must(expandFormula('butter', butterLookup));
  return checkComposition(boundSafetyTables(), {
    markets: ['GB', 'NI'],
    use: 'leave-on',
    category: '5A',
    bodyPart: 'body',
    productType: 'body-lotion',
    firstSupplied: '2026-11-25',
    contributions: must(rollUpContributions(expanded, butterMaterials)),
    materials: expanded.materials.map(({ materialId, percent }) => ({
      materialId,
      name: butterMaterials.get(materialId)?.name ?? '',
      percent,
    })),
    report: butterReport,
    baseId: 'quiet',
    scentId: 'butter',
    decisions: [],
  });
}

export function benchFullChecks(): Figure {
  const { markets } = checkButter();
  if (markets.some(({ verdicts }) => verdicts.length < 50))
    throw new Error('the check found nothing to judge');
  return {
    name: 'full check: 25 lines, base within base, 12 essential oils, GB and NI, report',
    value: ratePerSecond(checkButter, 0.5),
    unit: 'checks/s',
    beside: 'aim 2,000 on one core',
  };
}
