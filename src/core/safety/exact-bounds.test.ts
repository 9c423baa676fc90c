import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { expandFormula, type FormulaLine, rollUpContributions } from '../formula/index.ts';
import { must } from '../problem.ts';
import { Quotient } from '../quantity/index.ts';
import { checkComposition } from './check-composition.ts';
import { judgeReport } from './judge-report.ts';
import { judgeSupplierLimits } from './judge-supplier-limits.ts';

const tables = boundSafetyTables();
const THREE_HUNDRED_GRAMS = 300_000_000n;

/** Micrograms of each, filled up to 300 g with shea butter: shares of a third mostly have no end. */
function checkOf(micrograms: Readonly<Record<string, bigint>>, rest: { productType?: string } = {}) {
  const rows = Object.entries(micrograms);
  const filled = THREE_HUNDRED_GRAMS - rows.reduce((sum, [, mass]) => sum + mass, 0n);
  const lines = [...rows, ['Butyrospermum Parkii Butter', filled] as const].map(
    ([name, mass]): FormulaLine => {
      const text = mass.toString().padStart(7, '0');
      return {
        key: name,
        stage: 'Melt',
        item: { kind: 'material', id: name },
        grams: `${text.slice(0, -6)}.${text.slice(-6)}`,
      };
    },
  );
  const recipe = { formulaId: 'butter', name: 'Butter', lines };
  const expanded = must(expandFormula('butter', { revision: () => recipe, base: () => undefined }));
  const materials = new Map(lines.map(({ key }) => [key, { id: key, name: key, constituents: [] }]));
  const [market] = checkComposition(tables, {
    markets: ['EU'],
    use: 'leave-on',
    category: '5A',
    firstSupplied: '2026-11-25',
    contributions: must(rollUpContributions(expanded, materials)).map((one) => ({
      ...one,
      origin: 'natural' as const,
    })),
    ...rest,
  }).markets;
  if (!market) throw new Error('one market was asked');
  return market;
}

describe('parts that have no end as decimals', () => {
  // Annex III of Regulation (EC) No 1223/2009, rose ketones: 0.02 % together.
  const ketones = (last: bigint) => ({
    'alpha-Damascone': 20_000n,
    'delta-Damascone': 20_000n,
    Damascenone: last,
  });

  it('come to a limit exactly, and are within; one microgram more is over', () => {
    const wordsOf = (last: bigint) =>
      checkOf(ketones(last))
        .verdicts.filter(({ limitPercent }) => limitPercent === 0.02)
        .map((one) => one.verdict);
    expect(new Set(wordsOf(20_000n))).toEqual(new Set(['within']));
    expect(wordsOf(20_001n)).toContain('over');
  });

  // Annex III: named over 0.001 % in what is left on; exactly so much is not over.
  it('come to a threshold exactly, and are not named; one microgram more is', () => {
    const citral = (last: bigint) =>
      checkOf({ Geranial: 500n, Neral: 500n, Citral: last }).naming.named.map(({ labelName }) => labelName);
    expect(citral(2_000n)).not.toContain('Citral');
    expect(citral(2_001n)).toContain('Citral');
  });

  // Annex II, entry 358: below 1 mg/kg of furocoumarins in total in sun protection products.
  it('come to a strict limit exactly, and are over; one microgram less is within', () => {
    const furocoumarins = (last: bigint) =>
      checkOf({ Bergapten: 100n, Methoxsalen: 100n, Trioxsalen: last }, { productType: 'sun-protection' })
        .verdicts.filter(({ isStrict, limitPercent }) => isStrict === true && limitPercent === 0.0001)
        .map(({ verdict }) => verdict);
    expect(furocoumarins(100n)).toContain('over');
    expect(furocoumarins(99n)).toEqual(['within']);
  });

  const sixth = (parts: bigint) =>
    new Quotient(parts, 600n, () => {
      throw new Error('nothing is divided to judge it');
    });
  const three = (parts: bigint) =>
    [100n, 100n, parts].map((each) => ({ materialId: 'oil', name: 'Oil', percent: sixth(each) }));

  it('come to the least and the most of a report exactly, and to a supplier limit', () => {
    const range = { materialId: 'oil', name: 'Oil', leastPercent: '0.5', mostPercent: '0.5' };
    const report = { reference: 'R-1', materials: [range] };
    const ask = (parts: bigint) =>
      judgeReport({ report, materials: three(parts), date: '2026-11-25' }).materials[0]?.verdict;
    expect([99n, 100n, 101n].map(ask)).toEqual(['below', 'within', 'over']);
    const limit = [{ materialId: 'oil', mostPercent: '0.5', source: 'paper' }];
    const supplied = (parts: bigint) => judgeSupplierLimits(three(parts), limit)[0]?.verdict;
    expect([99n, 100n, 101n].map(supplied)).toEqual(['within', 'within', 'over']);
  });
});
