import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  buildRevisionOf,
  inGrams,
  inTins,
  type MakingBench,
  makeAll,
  makeBatch,
  makeFirmBase,
  reviseBase,
} from '../../../test/workshop/build-making.ts';
import { buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { countQueries } from '../../../test/workshop/count-queries.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { textOfPdf } from '../../../test/workshop/render-pdf.ts';
import { say, sayProblem } from '../../words/index.ts';
import type { Paper } from '../use-case.ts';

let bench: TestWorkshop;
let shop: MakingBench;
beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
});
afterEach(() => bench.close());

const onHand = async (id: string): Promise<string> =>
  (await bench.get('getLot', { params: { id } })).lot.onHand;
const startBase = (grams = '800') =>
  bench.get('startBatch', { body: { wish: inGrams(shop.baseRevision, grams) } });

type Started = Awaited<ReturnType<typeof startBase>>;
function additionAt(batch: Started, position: number) {
  const screen = batch.screens.find((one) => one.kind === 'addition' && one.position === position);
  if (screen?.kind !== 'addition') throw new Error(`there is no addition ${position}`);
  return screen;
}
const weigh = (batch: Started, position: number, actualGrams: string, more: object = {}) => {
  const { lotId, scaleId } = additionAt(batch, position);
  const body = { position, lotId: lotId ?? '', scaleId, actualGrams, ...more };
  return bench.ask('recordAddition', { params: { id: batch.id }, body });
};

describe('the plan of a batch', () => {
  it('sizes it from tins at their aim, the sample and what the bowl keeps', async () => {
    await makeFirmBase(bench, shop, '800');
    const wish = inTins(shop.mixtureRevision, [
      { productId: shop.product, units: 5 },
      { productId: shop.smallProduct, units: 3 },
    ]);
    const plan = await bench.get('planBatch', { body: wish });
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

  it('says which scale shows which target, and never asks for more of a limited oil than the formula', async () => {
    await makeFirmBase(bench, shop, '800');
    const plan = await bench.get('planBatch', { body: inGrams(shop.mixtureRevision, '190.8') });
    const [base, scent] = plan.rows;
    expect(base).toMatchObject({ itemName: 'Quiet base', targetGrams: '188.9', scaleName: 'Small scale' });
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
    const sooner = await buildLot(bench, shop.materials.shea, { quantity: '100', bestBefore: '2027-01-31' });
    const { rows } = await bench.get('planBatch', { body: inGrams(shop.baseRevision, '800') });
    expect(rows.map((row) => [row.itemName, row.lotId, row.exactGrams])).toEqual([
      ['Shea butter', sooner, '100'],
      ['Shea butter', shop.lots.shea, '420'],
      ['Sunflower oil', shop.lots.oil, '280'],
    ]);
    expect(rows[0]?.lotNote && say(rows[0].lotNote)).toBe('Takes all that is left of this lot.');
  });

  it('leaves out lots in quarantine, blocked or past their date, and uses one on its last day', async () => {
    await buildLot(bench, shop.materials.oil, { bestBefore: '2026-12-01', accept: false });
    await buildLot(bench, shop.materials.oil, { bestBefore: '2026-11-26' });
    const blocked = await buildLot(bench, shop.materials.oil, { bestBefore: '2026-12-02' });
    await bench.get('setLotStatus', {
      params: { id: blocked },
      body: { status: 'blocked', reason: 'Smells of paint' },
    });
    const today = await buildLot(bench, shop.materials.oil, { bestBefore: '2026-11-27' });
    bench.setClock('2026-11-27T08:05:00Z');
    const { rows } = await bench.get('planBatch', { body: inGrams(shop.baseRevision, '800') });
    expect(rows.find((row) => row.itemName === 'Sunflower oil')?.lotId).toBe(today);
  });

  it('names what binds: a material, then the labels, then the bowl', async () => {
    const base = await bench.get('planBatch', { body: inGrams(shop.baseRevision, '3000') });
    // 1000 g of oil at 35 %: 2857.1 g, taken down to a tenth.
    expect(say(base.limitedBy)).toBe('No more can be made of what is there of Sunflower oil.');
    expect(base.batchGrams).toBe('2857.1');
    expect(base.short.map((item) => [item.name, item.short])).toEqual([['Sunflower oil', '50']]);

    await makeFirmBase(bench, shop, '2500');
    const tins = (units: number) =>
      bench.get('planBatch', { body: inTins(shop.mixtureRevision, [{ productId: shop.product, units }]) });
    const labels = await tins(45);
    expect(labels.tins).toMatchObject([{ wanted: 45, possible: 40 }]);
    expect(say(labels.limitedBy)).toBe('No more can be filled: 60 ml tin runs out first.');
    expect(labels.short.map((item) => [item.name, item.unit, item.short])).toEqual([
      ['60 ml tin', 'pieces', '5'],
      ['Lid', 'pieces', '5'],
    ]);
    const { details, version } = await bench.get('getWorkshop');
    if (!details) throw new Error('the workshop has begun');
    await bench.get('changeWorkshop', { body: { version, details: { ...details, bowlGrams: '500' } } });
    const bowl = await tins(20);
    expect(say(bowl.limitedBy)).toBe('No more goes into the bowl.');
    // (13 x 35.01 + 10) / 0.97 = 479.5 g goes in, 14 tins would take 515.6 g.
    expect(bowl.tins).toMatchObject([{ wanted: 20, possible: 13 }]);
  });

  it('lays the whole wish out where nothing can be made of it, with rows that have no lot', async () => {
    const plan = await bench.get('planBatch', {
      body: inTins(shop.mixtureRevision, [{ productId: shop.product, units: 5 }]),
    });
    expect(plan).toMatchObject({ batchGrams: '190.8', tins: [{ wanted: 5, possible: 0 }] });
    expect(say(plan.limitedBy)).toBe('No more can be made of what is firm of Quiet base.');
    expect(plan.rows[0]).toMatchObject({ lotId: null, lotNumber: null });
  });

  it('writes nothing', async () => {
    const entries = () => bench.context.storage.db.selectFrom('entry').selectAll().execute();
    const before = await entries();
    await bench.get('planBatch', { body: inGrams(shop.baseRevision, '800') });
    expect(await entries()).toEqual(before);
  });

  it('refuses an unknown revision, tins of another formula and a base by the tin', async () => {
    const plan = async (body: ReturnType<typeof inTins>) => codesOf(await bench.ask('planBatch', { body }));
    expect(await plan(inGrams('nothing', '100'))).toEqual(['thing-not-found']);
    const tins = [{ productId: shop.product, units: 5 }];
    expect(await plan(inTins(shop.baseRevision, tins))).toEqual(['base-not-filled']);
    expect(await plan(inTins(shop.mixtureRevision, [...tins, ...tins]))).toEqual(['product-twice']);
    const other = await buildRevisionOf(bench, 'Other', 'OT', shop.materials.shea);
    expect(await plan(inTins(other, tins))).toEqual(['product-not-of-formula']);
  });
});

describe('the start of a batch', () => {
  it('numbers batches by the letters of their formula, and takes nothing from the lots', async () => {
    const first = await startBase();
    const second = await startBase('100');
    expect([first.number, second.number]).toEqual(['QB-0001', 'QB-0002']);
    expect(first).toMatchObject({
      state: 'making',
      plannedGrams: '800',
      by: 'Ada Quill',
      markets: ['GB', 'NI'],
    });
    expect(first.screens.map((one) => (one.kind === 'step' ? one.what : one.itemName))).toEqual([
      'Shea butter',
      'Melt in a water bath',
      'Sunflower oil',
      'Cover and let it set',
    ]);
    expect(await onHand(shop.lots.shea)).toBe('2000');
  });

  it('counts the same stamp once', async () => {
    const body = { stamp: bench.stamp(), wish: inGrams(shop.baseRevision, '800') };
    const first = await bench.get('startBatch', { body });
    expect(await bench.get('startBatch', { body })).toEqual(first);
    expect(await bench.get('listBatches')).toHaveLength(1);
  });

  it('refuses what is short, and names the item and how to mend it', async () => {
    const refusal = await bench.ask('startBatch', { body: { wish: inGrams(shop.baseRevision, '3000') } });
    expect(codesOf(refusal)).toEqual(['item-short', 'batch-hindered']);
    if (refusal.ok) return;
    expect(refusal.problems[0] && sayProblem(refusal.problems[0]).says).toBe(
      'There is too little of Sunflower oil: 1000 g of 1050 g; 50 g missing.',
    );
    expect(await bench.get('listBatches')).toEqual([]);
  });

  it('refuses for sale what lies outside the report, and lets it be tried', async () => {
    await makeFirmBase(bench, shop, '800');
    const strong = await reviseMixture({ scentGrams: '20' });
    const refusal = await bench.ask('startBatch', { body: { wish: inGrams(strong, '100') } });
    expect(codesOf(refusal)).toContain('batch-hindered');
    const trial = await bench.get('startBatch', {
      body: { wish: inGrams(strong, '100', { purpose: 'trial' }) },
    });
    expect(trial.purpose).toBe('trial');
  });

  it('refuses for sale under a report past its review day, says what helps, and lets it be tried', async () => {
    await makeFirmBase(bench, shop, '800');
    const [report] = await bench.get('listReports');
    const reviewBy = async (day: string) => {
      const details = { ...report?.details, reviewBy: day } as NonNullable<typeof report>['details'];
      const version = (await bench.get('listReports'))[0]?.version ?? 0;
      await bench.get('saveReport', { body: { id: report?.id ?? '', version, details } });
    };
    await reviewBy('2026-11-25');
    const wish = inGrams(shop.mixtureRevision, '100');
    const refusal = await bench.ask('startBatch', { body: { wish } });
    expect(codesOf(refusal)).toEqual(['batch-hindered']);
    expect(refusal.ok ? '' : refusal.problems.map((one) => sayProblem(one).says)[0]).toContain(
      'by 25 November 2026',
    );
    const trial = inGrams(shop.mixtureRevision, '100', { purpose: 'trial' });
    expect((await bench.get('startBatch', { body: { wish: trial } })).purpose).toBe('trial');
    await reviewBy('2026-11-26');
    expect((await bench.get('startBatch', { body: { wish } })).purpose).toBe('sale');
  });

  it('refuses for sale a revision that is marked as a trial', async () => {
    await makeFirmBase(bench, shop, '800');
    const tried = await reviseMixture({ standing: 'trial' });
    const refusal = await bench.ask('startBatch', { body: { wish: inGrams(tried, '100') } });
    const said = refusal.ok ? [] : refusal.problems.map((one) => sayProblem(one).says);
    expect(said.some((one) => /trial/i.test(one))).toBe(true);
  });

  it('refuses for sale an unknown that nobody decided, or that somebody refused', async () => {
    await bench.close();
    bench = await openTestWorkshop();
    shop = await buildMakingBench(bench, { isDecided: false });
    await makeFirmBase(bench, shop, '800');
    const start = async () =>
      codesOf(await bench.ask('startBatch', { body: { wish: inGrams(shop.mixtureRevision, '100') } }));
    expect(await start()).toEqual(['batch-hindered']);
    const params = { id: shop.mixtureRevision };
    const { open } = await bench.get('checkRevision', { params, query: {} });
    expect(open).toHaveLength(1);
    const body = { key: open[0]?.key ?? '', verdict: 'refused' as const, reason: 'Not at this share.' };
    await bench.get('decideUnknown', { params, body });
    expect(await start()).toEqual(['batch-hindered']);
  });

  it('keeps a base that is not firm, or of a trial, out of what is sold', async () => {
    await makeBatch(bench, inGrams(shop.baseRevision, '800'));
    const wish = inGrams(shop.mixtureRevision, '100');
    expect(codesOf(await bench.ask('startBatch', { body: { wish } }))).toContain('item-short');
    const tried = await makeBatch(bench, inGrams(shop.baseRevision, '400', { purpose: 'trial' }));
    await bench.get('sayFirm', { params: { id: tried.lotId ?? '' }, body: { remark: 'Firm.' } });
    expect(codesOf(await bench.ask('startBatch', { body: { wish } }))).toContain('item-short');
    const trial = inGrams(shop.mixtureRevision, '100', { purpose: 'trial' });
    expect((await bench.get('startBatch', { body: { wish: trial } })).purpose).toBe('trial');
  });

  it('does not use a base that was made by another composition than the one in force', async () => {
    await makeFirmBase(bench, shop, '800');
    const wish = inGrams(shop.mixtureRevision, '100');
    await reviseBase(bench, shop, ['65', '35']);
    expect((await bench.ask('startBatch', { body: { wish } })).ok).toBe(true);
    await reviseBase(bench, shop, ['66', '34']);
    expect(codesOf(await bench.ask('startBatch', { body: { wish } }))).toContain('item-short');
  });
});

/** The mixture's next revision. */
async function reviseMixture({ scentGrams = '10', standing = 'for-sale' as 'for-sale' | 'trial' }) {
  const { latest } = await bench.get('getFormula', { params: { id: shop.mixture } });
  if (!latest) throw new Error('the mixture has a revision');
  const lines = latest.details.lines.map((line) =>
    line.itemId === shop.materials.scent ? { ...line, grams: scentGrams } : line,
  );
  const body = { version: latest.version, details: { ...latest.details, lines, standing } };
  return (await bench.get('saveRevision', { params: { id: shop.mixture }, body })).id;
}

describe('weighing in', () => {
  it('books what the scale said, not what was asked for', async () => {
    const batch = await startBase();
    const view = await weigh(batch, 0, '521.3');
    expect(view.ok && view.value).toMatchObject({ actualGrams: '521.3', verdict: 'inside' });
    const { screens } = await bench.get('getBatch', { params: { id: batch.id } });
    expect(screens[0]?.done).toEqual(view.ok && view.value);
    expect(await onHand(shop.lots.shea)).toBe('1478.7');
  });

  it('asks outside of the band what was done differently and why, and on its ends does not', async () => {
    const batch = await startBase();
    // 520 g and 2 % of it either way: 509.6 to 530.4 g.
    expect(codesOf(await weigh(batch, 0, '509.5'))).toEqual(['weight-outside-band']);
    expect(codesOf(await weigh(batch, 0, '530.5'))).toEqual(['weight-outside-band']);
    await weigh(batch, 0, '530.5', { deviation: { what: 'A tenth over', why: 'A lump' } });
    const { deviations } = await bench.get('getBatch', { params: { id: batch.id } });
    expect(deviations).toMatchObject([{ screen: 0, what: 'A tenth over', why: 'A lump' }]);
    expect((await weigh(batch, 1, '285.6')).ok).toBe(true);
  });

  it('is done once: the other tab is refused until the first entry is struck', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '520');
    expect(codesOf(await weigh(batch, 0, '520'))).toEqual(['addition-done-already']);
    expect(await onHand(shop.lots.shea)).toBe('1480');
  });

  it('counts the same stamp once', async () => {
    const batch = await startBase();
    const stamp = bench.stamp();
    const first = await weigh(batch, 0, '520', { stamp });
    expect(await weigh(batch, 0, '520', { stamp })).toEqual(first);
    expect(await onHand(shop.lots.shea)).toBe('1480');
  });

  it('takes another released lot only with what and why, and no lot of anything else', async () => {
    const batch = await startBase();
    const other = await buildLot(bench, shop.materials.shea, { bestBefore: '2028-01-31' });
    expect(codesOf(await weigh(batch, 0, '520', { lotId: other }))).toEqual(['lot-not-planned']);
    const deviation = { what: 'Another tub', why: 'The first was at the stall' };
    expect((await weigh(batch, 0, '520', { lotId: other, deviation })).ok).toBe(true);
    expect(await onHand(other)).toBe('480');
    expect(codesOf(await weigh(batch, 1, '280', { lotId: shop.lots.scent, deviation }))).toEqual([
      'lot-of-another-item',
    ]);
  });

  it('takes nothing that is expired, blocked or not there, whatever is said about it', async () => {
    const batch = await startBase();
    const deviation = { what: 'Another tub', why: 'In a hurry' };
    const old = await buildLot(bench, shop.materials.shea, { bestBefore: '2026-11-26' });
    bench.setClock('2026-11-27T08:05:00Z');
    expect(codesOf(await weigh(batch, 0, '520', { lotId: old, deviation }))).toEqual(['lot-expired']);
    await bench.get('setLotStatus', {
      params: { id: shop.lots.shea },
      body: { status: 'blocked', reason: 'Hair' },
    });
    expect(codesOf(await weigh(batch, 0, '520'))).toEqual(['lot-not-released-for-use']);
    expect(codesOf(await weigh(batch, 0, '520', { lotId: 'none', deviation }))).toEqual(['thing-not-found']);
  });

  it('says what a lot has where more is asked of it, and that the tub is to be weighed', async () => {
    const batch = await startBase('2800');
    await bench.get('moveLot', {
      params: { id: shop.lots.oil },
      body: { kind: 'binned', quantity: '900', reason: 'Spilt' },
    });
    const refusal = await weigh(batch, 1, '980');
    if (refusal.ok || !refusal.problems[0]) throw new Error('it holds 100 g only');
    expect(refusal.problems[0]).toMatchObject({ code: 'lot-too-small', found: '980', allowed: '100' });
    expect(sayProblem(refusal.problems[0]).mend).toContain('Weigh the tub');
    expect(await onHand(shop.lots.oil)).toBe('100');
  });

  it('strikes a wrong entry: it stays readable, and its amount goes back to the lot', async () => {
    const batch = await startBase();
    const wrong = await weigh(batch, 0, '530');
    const entryId = wrong.ok ? wrong.value.entryId : '';
    const params = { id: batch.id };
    const struck = await bench.get('strikeAddition', { params, body: { entryId, reason: 'Wrong tub' } });
    expect(additionAt(struck, 0).done).toBeNull();
    expect(await onHand(shop.lots.shea)).toBe('2000');
    const { movements } = await bench.get('getLot', { params: { id: shop.lots.shea } });
    expect(movements.map((row) => [row.kind, row.change, row.reason])).toEqual(
      expect.arrayContaining([
        ['used', '-530', ''],
        ['returned', '530', 'Wrong tub'],
      ]),
    );
    expect(
      codesOf(await bench.ask('strikeAddition', { params, body: { entryId, reason: 'Twice' } })),
    ).toEqual(['entry-struck-already']);
    expect((await weigh(batch, 0, '520')).ok).toBe(true);
  });

  it('writes steps down once, strikes them too, and takes late deviations', async () => {
    const batch = await startBase();
    const params = { id: batch.id };
    const body = { position: 0, celsius: '72', minutes: '20', remark: 'Clear' };
    const view = await bench.get('recordStep', { params, body });
    expect(view.screens[1]?.done).toMatchObject({ celsius: '72', minutes: '20', remark: 'Clear' });
    expect(codesOf(await bench.ask('recordStep', { params, body }))).toEqual(['step-done-already']);
    const entryId = view.screens[1]?.done?.entryId ?? '';
    await bench.get('strikeAddition', { params, body: { entryId, reason: 'Read the wrong probe' } });
    const again = await bench.get('recordStep', { params, body: { ...body, celsius: '70' } });
    expect(again.screens[1]?.done).toMatchObject({ celsius: '70' });
    expect(codesOf(await bench.ask('recordStep', { params, body: { ...body, position: 9 } }))).toEqual([
      'thing-not-found',
    ]);
    const late = { screen: 3, what: 'No lid', why: 'It did not fit' };
    expect((await bench.get('recordDeviation', { params, body: late })).deviations).toMatchObject([late]);
    expect(codesOf(await bench.ask('recordDeviation', { params, body: { ...late, screen: 4 } }))).toEqual([
      'screen-unknown',
    ]);
  });
});

describe('the end of a batch', () => {
  it('makes a base a lot in quarantine with its setting time, looked at again no later than its lots end', async () => {
    const made = await makeBatch(bench, inGrams(shop.baseRevision, '800'), 9.5);
    expect(made).toMatchObject({
      state: 'made',
      lotOnHand: '790.5',
      outcome: { inputGrams: '800', yieldGrams: '790.5', lossGrams: '9.5', by: 'Ada Quill' },
    });
    const { lot } = await bench.get('getLot', { params: { id: made.lotId ?? '' } });
    expect(lot).toMatchObject({
      number: 'QB-0001',
      status: 'quarantine',
      since: '2026-11-26',
      bestBefore: '2027-08-31',
      keepUntil: '2027-05-26',
      firmFrom: '2026-11-26T20:05:00Z',
      firmTo: '2026-11-27T08:05:00Z',
    });
  });

  it('releases a mixture for filling, under another number than its tins will carry', async () => {
    await makeFirmBase(bench, shop, '800');
    const made = await makeBatch(bench, inGrams(shop.mixtureRevision, '190.8'));
    const { lot } = await bench.get('getLot', { params: { id: made.lotId ?? '' } });
    expect(lot).toMatchObject({ number: 'LB-0001 bowl', status: 'released', bestBefore: '2027-06-30' });
  });

  it('waits until everything is weighed in', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '520');
    const body = { yieldGrams: '500' };
    const refusal = await bench.ask('finishBatch', { params: { id: batch.id }, body });
    expect(codesOf(refusal)).toEqual(['additions-missing']);
  });

  it('does not believe more out than in, beyond the errors of the weighings', async () => {
    const batch = await startBase();
    await makeAll(bench, batch.id);
    const finish = (yieldGrams: string) =>
      bench.ask('finishBatch', { params: { id: batch.id }, body: { yieldGrams } });
    // Two weighings on a scale of 0.1 g: 0.1 g of error each, and as much again for the yield.
    expect(codesOf(await finish('800.5'))).toEqual(['yield-above-input']);
    const made = await finish('800.4');
    expect(made.ok && made.value.outcome).toMatchObject({ lossGrams: '-0.4' });
  });

  it('takes no more entries when it is made or given up', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '520');
    const params = { id: batch.id };
    const given = await bench.get('abandonBatch', { params, body: { reason: 'Burnt' } });
    expect(given).toMatchObject({ state: 'abandoned', outcome: { inputGrams: '520', lossGrams: '520' } });
    expect(await onHand(shop.lots.shea)).toBe('1480');
    expect(codesOf(await weigh(batch, 1, '280'))).toEqual(['batch-not-making']);
    expect(codesOf(await bench.ask('finishBatch', { params, body: { yieldGrams: '1' } }))).toEqual([
      'batch-not-making',
    ]);
    expect(await bench.get('listBatches')).toMatchObject([
      { state: 'abandoned', screensDone: 1, screensTotal: 4 },
    ]);
  });

  it('is signed by somebody who works here', async () => {
    const wish = inGrams(shop.baseRevision, '800');
    const body = { stamp: bench.stamp({ by: 'nobody' }), wish };
    expect(codesOf(await bench.ask('startBatch', { body }))).toEqual(['person-unknown']);
  });
});

describe('the papers of a batch', () => {
  const paper = async (id: string) => {
    const { fileName, bytes } = (await bench.get('getBatchSheet', { params: { id } })) as Paper;
    return { fileName, text: textOfPdf(bytes).replace(/\s+/g, ' ') };
  };

  it('are the weighing sheet while it is being made', async () => {
    const batch = await startBase();
    const { fileName, text } = await paper(batch.id);
    expect(fileName).toBe('weighing-sheet-QB-0001.pdf');
    for (const word of ['Shea butter', 'L-0001', '520', 'Middle scale', 'Melt in a water bath'])
      expect(text).toContain(word);
  });

  it('are its record afterwards, with what was struck and what was done differently', async () => {
    const batch = await startBase();
    const params = { id: batch.id };
    const wrong = await weigh(batch, 0, '529.9');
    const entryId = wrong.ok ? wrong.value.entryId : '';
    await bench.get('strikeAddition', { params, body: { entryId, reason: 'Tub not tared' } });
    await weigh(batch, 0, '530.5', { deviation: { what: 'A tenth over', why: 'A lump' } });
    await makeAll(bench, batch.id);
    await bench.get('finishBatch', { params, body: { yieldGrams: '800' } });
    const { fileName, text } = await paper(batch.id);
    expect(fileName).toBe('batch-record-QB-0001.pdf');
    for (const word of [
      '530.5',
      'Above its band.',
      'Shea butter, lot L-0001: 529.9 g',
      'Tub not tared',
      'A tenth over',
      'A lump',
      '800 g, 98.7 % of what went in',
      'Ada Quill',
      '2026-11-26 08:05',
    ])
      expect(text).toContain(word);
  });

  it('say of a batch that was given up what had gone in', async () => {
    const batch = await startBase();
    await bench.get('abandonBatch', { params: { id: batch.id }, body: { reason: 'Burnt' } });
    const { text } = await paper(batch.id);
    expect(text).toContain('Given up, and nothing was made of it: Burnt');
    expect(text).toContain('not weighed in');
  });
});

describe('how often the file is asked', () => {
  const list = () => countQueries(bench, () => bench.get('listBatches'));

  it('is the same for a list of one batch and of twenty', async () => {
    await makeBatch(bench, inGrams(shop.baseRevision, '20'));
    const few = await list();
    for (let nth = 0; nth < 19; nth += 1) await startBase('20');
    expect(await bench.get('listBatches')).toHaveLength(20);
    expect(await list()).toBe(few);
  });

  it('is the same for the first weighing of a batch and the last', async () => {
    const batch = await startBase();
    const first = await countQueries(bench, () => weigh(batch, 0, '520'));
    const last = await countQueries(bench, () => weigh(batch, 1, '280'));
    expect(last).toBe(first);
    expect(first).toBeLessThan(40);
  });
});
