import { describe, expect, it } from 'vitest';
import { buildRevisionOf, inGrams, inTins, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { say } from '../../words/index.ts';

const at = openMakingBench();

describe('the plan of a batch', () => {
  it('sizes it from tins at their aim, the sample and what the bowl keeps', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const wish = inTins(at.shop.mixtureRevision, [
      { productId: at.shop.product, units: 5 },
      { productId: at.shop.smallProduct, units: 3 },
    ]);
    const plan = await at.bench.get('planBatch', { body: wish });
    // By hand: aims 35.01 and 20.01 g (label and the small scale's two half steps), (5 x 35.01 + 3 x 20.01 + 10) / 0.97 = 252.66 g.
    expect(plan.batchGrams).toBe('252.7');
    expect(plan.tins.map((tin) => [tin.wanted, tin.possible])).toEqual([
      [5, 5],
      [3, 3],
    ]);
    expect(plan.sizing.map((one) => say(one))).toContain('5 tins of Lavender butter, 35.01 g each: 175.05 g');
    expect(say(plan.limitedBy)).toBe('All that is wanted can be made.');
    expect(plan.hindrances).toEqual([]);
  });

  it('says first that it may not be made for sale, and counts no tin of it; a trial of it may be made', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    at.bench.setClock('2028-10-02T08:00:00Z');
    const wish = inTins(at.shop.mixtureRevision, [{ productId: at.shop.product, units: 5 }]);
    const plan = await at.bench.get('planBatch', { body: wish });
    expect(say(plan.limitedBy)).toBe('Lavender butter, revision 1, may not be made for sale.');
    expect(plan.hindrances.map((one) => one.code)).toContain('sale-report-review-passed');
    expect(plan.tins).toMatchObject([{ wanted: 5, possible: 0 }]);
    const trial = await at.bench.get('planBatch', { body: { ...wish, purpose: 'trial' } });
    expect(trial.limitedBy.code).not.toBe('limited-by-check');
  });

  it('says which scale shows which target, and never asks for more of a limited oil than the formula', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const plan = await at.bench.get('planBatch', { body: inGrams(at.shop.mixtureRevision, '190.8') });
    const [base, scent] = plan.rows;
    // It would fit on the small scale of 200 g, but not with a vessel.
    expect(base).toMatchObject({ itemName: 'Quiet base', targetGrams: '188.9', scaleName: 'Middle scale' });
    // 1.908 g asked for; 5 % either way, and up to 1.5 times by the report.
    expect(scent).toMatchObject({
      exactGrams: '1.908',
      targetGrams: '1.9',
      lowGrams: '1.81',
      highGrams: '1.99',
    });
    expect(scent?.relativeError).toBeCloseTo(0.01 / 1.9, 12);
  });

  it('lists lots first to end first, and goes on with the next where one does not suffice', async () => {
    const sooner = await buildLot(at.bench, at.shop.materials.shea, {
      quantity: '100',
      bestBefore: '2027-01-31',
    });
    const { rows } = await at.bench.get('planBatch', { body: inGrams(at.shop.baseRevision, '800') });
    expect(rows.map((row) => [row.itemName, row.lotId, row.exactGrams])).toEqual([
      ['Shea butter', sooner, '100'],
      ['Shea butter', at.shop.lots.shea, '420'],
      ['Sunflower oil', at.shop.lots.oil, '280'],
    ]);
    expect(rows[0]?.lotNote && say(rows[0].lotNote)).toBe('Takes all that is left of this lot.');
  });

  it('opens no lot for a rest of less than a hundredth of what is needed, and asks whether it is empty', async () => {
    const rest = { quantity: '5.19', bestBefore: '2027-01-31' };
    await buildLot(at.bench, at.shop.materials.shea, rest);
    const wish = inGrams(at.shop.baseRevision, '800');
    const { rows } = await at.bench.get('planBatch', { body: wish });
    expect(rows.map((row) => [row.lotId, row.exactGrams])).toEqual([
      [at.shop.lots.shea, '520'],
      [at.shop.lots.oil, '280'],
    ]);
    expect(rows[0]?.lotNote).toMatchObject({ code: 'lot-rest-left-out', parameters: { grams: '5.19' } });
  });

  it('opens one that has just a hundredth', async () => {
    const sooner = await buildLot(at.bench, at.shop.materials.shea, {
      quantity: '5.2',
      bestBefore: '2027-01-31',
    });
    const { rows } = await at.bench.get('planBatch', { body: inGrams(at.shop.baseRevision, '800') });
    expect(rows[0]).toMatchObject({ lotId: sooner, exactGrams: '5.2' });
  });

  it('leaves out lots in quarantine, blocked or past their date, and uses one on its last day', async () => {
    await buildLot(at.bench, at.shop.materials.oil, { bestBefore: '2026-12-01', accept: false });
    await buildLot(at.bench, at.shop.materials.oil, { bestBefore: '2026-11-26' });
    const blocked = await buildLot(at.bench, at.shop.materials.oil, { bestBefore: '2026-12-02' });
    await at.bench.get('setLotStatus', {
      params: { id: blocked },
      body: { status: 'blocked', reason: 'Smells of paint' },
    });
    const today = await buildLot(at.bench, at.shop.materials.oil, { bestBefore: '2026-11-27' });
    at.bench.setClock('2026-11-27T08:05:00Z');
    const { rows } = await at.bench.get('planBatch', { body: inGrams(at.shop.baseRevision, '800') });
    expect(rows.find((row) => row.itemName === 'Sunflower oil')?.lotId).toBe(today);
  });

  it('names what binds: a material, then the labels, then the bowl', async () => {
    const base = await at.bench.get('planBatch', { body: inGrams(at.shop.baseRevision, '3000') });
    // 1000 g of oil at 35 %: 2857.1 g, taken down to a tenth.
    expect(say(base.limitedBy)).toBe('No more can be made of what is there of Sunflower oil.');
    expect(base.batchGrams).toBe('2857.1');
    expect(base.short.map((item) => [item.name, item.short])).toEqual([['Sunflower oil', '50']]);

    await makeFirmBase(at.bench, at.shop, '2500');
    const tins = (units: number) =>
      at.bench.get('planBatch', {
        body: inTins(at.shop.mixtureRevision, [{ productId: at.shop.product, units }]),
      });
    const labels = await tins(45);
    expect(labels.tins).toMatchObject([{ wanted: 45, possible: 40 }]);
    expect(say(labels.limitedBy)).toBe('No more can be filled: 60 ml tin runs out first.');
    expect(labels.short.map((item) => [item.name, item.unit, item.short])).toEqual([
      ['60 ml tin', 'pieces', '5'],
      ['Lid', 'pieces', '5'],
    ]);
    const { details, version } = await at.bench.get('getWorkshop');
    if (!details) throw new Error('the workshop has begun');
    await at.bench.get('changeWorkshop', { body: { version, details: { ...details, bowlGrams: '500' } } });
    const bowl = await tins(20);
    expect(say(bowl.limitedBy)).toBe('No more goes into the bowl.');
    // (13 x 35.01 + 10) / 0.97 = 479.5 g goes in, 14 tins would take 515.6 g.
    expect(bowl.tins).toMatchObject([{ wanted: 20, possible: 13 }]);
  });

  it('lays the whole wish out where nothing can be made of it, with rows that have no lot', async () => {
    const plan = await at.bench.get('planBatch', {
      body: inTins(at.shop.mixtureRevision, [{ productId: at.shop.product, units: 5 }]),
    });
    expect(plan).toMatchObject({ batchGrams: '190.8', tins: [{ wanted: 5, possible: 0 }] });
    expect(say(plan.limitedBy)).toBe('No more can be made of what is firm of Quiet base.');
    expect(plan.rows[0]).toMatchObject({ lotId: null, lotNumber: null });
  });

  it('writes nothing', async () => {
    const entries = () => at.bench.context.storage.db.selectFrom('entry').selectAll().execute();
    const before = await entries();
    await at.bench.get('planBatch', { body: inGrams(at.shop.baseRevision, '800') });
    expect(await entries()).toEqual(before);
  });

  it('refuses an unknown revision, tins of another formula and a base by the tin', async () => {
    const plan = async (body: ReturnType<typeof inTins>) =>
      codesOf(await at.bench.ask('planBatch', { body }));
    expect(await plan(inGrams('nothing', '100'))).toEqual(['thing-not-found']);
    const tins = [{ productId: at.shop.product, units: 5 }];
    expect(await plan(inTins(at.shop.baseRevision, tins))).toEqual(['base-not-filled']);
    expect(await plan(inTins(at.shop.mixtureRevision, [...tins, ...tins]))).toEqual(['product-twice']);
    const other = await buildRevisionOf(at.bench, 'Other', 'OT', at.shop.materials.shea);
    expect(await plan(inTins(other, tins))).toEqual(['product-not-of-formula']);
  });
});
