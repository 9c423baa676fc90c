import { describe, expect, it } from 'vitest';
import { buildBase, line } from '../../../test/workshop/build-formula.ts';
import { inGrams, makeAll, makeBatch } from '../../../test/workshop/build-making.ts';
import { buildIngredient, buildLot } from '../../../test/workshop/build-stock.ts';
import { constituent } from '../../../test/workshop/check-bench.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';

const at = openMakingBench();

async function make(grams: string, deviation?: object): Promise<void> {
  const batch = await at.startBase('100');
  await at.weigh(batch, 0, grams, deviation ? { deviation } : {});
  await makeAll(at.bench, batch.id);
  await at.bench.get('finishBatch', { params: { id: batch.id }, body: { yieldGrams: '98' } });
}
const wandering = () => at.bench.get('getWandering', { params: { id: at.shop.base } });

describe('which line of a formula wanders', () => {
  it('is told from the third making on, with the share of each', async () => {
    await make('65');
    await make('66');
    expect(await wandering()).toEqual({ made: 2, markets: [], lines: [] });
    await make('64');
    const { made, lines } = await wandering();
    expect(made).toBe(3);
    expect(lines.map(({ itemName }) => itemName).sort()).toEqual(['Shea butter', 'Sunflower oil']);
    const shea = lines.find(({ itemName }) => itemName === 'Shea butter');
    // 65 of 100, 66 of 101, 64 of 99 g.
    expect(shea?.shares).toEqual(['65', '65.347', '64.646']);
    expect(shea).toMatchObject({
      askedPercent: '65',
      roomLowPercent: '63.7',
      roomHighPercent: '66.3',
      bound: 'band',
    });
    // The oil is the smaller: the same grams are more of its room.
    expect(lines[0]?.itemName).toBe('Sunflower oil');
  });

  it.each([[['GB']], [['EU', 'NI']]] as const)(
    'judges the room of each line for %s, where it was made for that',
    async (markets) => {
      // 0.17 % of 35 % is 0.0595 %; the European Union allows 0.06 % in leave-on products (Regulation (EC) 1223/2009, annex III), Great Britain as much.
      const oil = await buildIngredient(at.bench, {
        name: 'Golden oil',
        inciEu: 'Helianthus Annuus Seed Oil',
        constituents: [constituent('Methyl Salicylate', '119-36-8', '0.17')],
      });
      await buildLot(at.bench, oil, { bestBefore: '2028-01-31' });
      const base = await buildBase(at.bench, [line(at.shop.materials.shea, '650'), line(oil, '350')], {
        name: 'Golden base',
        code: 'GO',
      });
      const wish = inGrams(base.revisionId, '100', { purpose: 'trial', markets: [...markets] });
      for (let nth = 0; nth < 3; nth += 1) await makeBatch(at.bench, wish);
      const found = await at.bench.get('getWandering', { params: { id: base.formulaId } });
      expect(found.markets).toEqual(markets);
      expect(found.lines.find(({ itemName }) => itemName === 'Golden oil')?.roomHighPercent).toBe('35.294');
    },
  );

  it('is nothing of a formula that was never made', async () => {
    expect(await wandering()).toEqual({ made: 0, markets: [], lines: [] });
  });
});
