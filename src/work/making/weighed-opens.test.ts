import { describe, expect, it } from 'vitest';
import { baseLine, buildMixture, buildReport, line } from '../../../test/workshop/build-formula.ts';
import { acceptUnknowns, inGrams, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildIngredient, buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { sayProblem } from '../../words/index.ts';

const at = openMakingBench();
const deviation = { what: 'Too much', why: 'The spoon slipped' };

type Given = NonNullable<Parameters<typeof buildIngredient>[1]>;

/** A batch of 100 g for sale with so much of the material in it, all unknowns decided, the report allowing anything. */
async function startWith(given: Given, percent: string) {
  const { bench, shop } = at;
  const asked = await buildIngredient(bench, given);
  await buildLot(bench, asked, { quantity: '50', bestBefore: '2027-06-30' });
  const lines = [
    baseLine(shop.base, String(100 - Number(percent))),
    line(asked, percent, { stage: 'Scent' }),
  ];
  const mix = await buildMixture(bench, lines, { name: 'Asked butter', code: 'AB' });
  const ranges = [shop.materials.shea, shop.materials.oil, asked].map((materialId) => ({
    materialId,
    leastPercent: '0',
    mostPercent: '100',
  }));
  const details = { reference: 'R-9', reviewBy: '2028-10-01', baseFormulaId: shop.base };
  await buildReport(bench, { ...details, formulaIds: [mix.formulaId], ranges });
  await acceptUnknowns(bench, mix.revisionId);
  await makeFirmBase(bench, shop, '800');
  return bench.get('startBatch', { body: { wish: inGrams(mix.revisionId, '100') } });
}

const wordsOf = (refused: Awaited<ReturnType<typeof at.weigh>>): string =>
  refused.ok ? '' : refused.problems.map((one) => sayProblem(one).says).join(' ');

describe('what only the weighing leaves unknown', () => {
  it('is told before it counts: a preservative whose limit counts its acid', async () => {
    // Annex V of Regulation (EC) No 1223/2009, entry 1: benzoic acid and its sodium salt, 0.5 % as the acid in what stays
    // on. 0.4 % of the salt is within whatever it counts as; 3 % is not known to be.
    const batch = await startWith(
      { name: 'Sodium benzoate', inciEu: 'Sodium Benzoate', cas: ['532-32-1'], role: null },
      '0.4',
    );
    const refused = await at.weigh(batch, 1, '3', { deviation });
    expect(codesOf(refused)).toEqual(['weighed-over-limits']);
    expect(wordsOf(refused)).toContain('Sodium Benzoate');
    expect(codesOf(await at.weigh(batch, 1, '0.4'))).toEqual([]);
  });

  it('is told where a decision was upon less than half of it', async () => {
    const batch = await startWith(
      {
        name: 'Secret blend',
        inciEu: 'Parfum',
        constituentsAre: null,
        constituentsPaper: '',
        role: 'fragrance',
      },
      '0.5',
    );
    const refused = await at.weigh(batch, 1, '8', { deviation, isReadingSure: true });
    expect(codesOf(refused)).toEqual(['weighed-over-limits']);
    expect(wordsOf(refused)).toContain('Secret blend');
    // 2 x 0.5 % of what is then in the bowl: x / (99.5 + x) = 1 % at x = 1.005.
    expect(codesOf(await at.weigh(batch, 1, '1.006', { deviation, isReadingSure: true }))).toEqual([
      'weighed-over-limits',
    ]);
    expect(codesOf(await at.weigh(batch, 1, '1.005', { deviation, isReadingSure: true }))).toEqual([]);
  });
});
