import { describe, expect, it } from 'vitest';
import { inGrams, makeAll } from '../../../test/workshop/build-making.ts';
import { buildIngredient, buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench, type Started } from '../../../test/workshop/making-bench.ts';
import { textOfPdf } from '../../../test/workshop/render-pdf.ts';
import type { Paper } from '../use-case.ts';

const at = openMakingBench();
const { startBase, weigh, onHand } = at;

const spill = (batch: Started, body: object) =>
  at.bench.ask('recordSpill', {
    params: { id: batch.id },
    body: { position: 0, lotId: at.shop.lots.shea, grams: '20', reason: 'The beaker fell', ...body },
  });
const viewOf = (id: string) => at.bench.get('getBatch', { params: { id } });
const firstOf = async (id: string) => at.additionAt(await viewOf(id), 0);
const startTrial = () =>
  at.bench.get('startBatch', {
    body: { wish: inGrams(at.shop.baseRevision, '800', { purpose: 'trial' }) },
  });

describe('what was spilt', () => {
  it('is out of the lot and not in the bowl, and is weighed again', async () => {
    const batch = await startBase();
    expect((await spill(batch, {})).ok).toBe(true);
    expect(await onHand(at.shop.lots.shea)).toBe('1980');
    const view = await viewOf(batch.id);
    expect(view.spills).toMatchObject([{ item: 'Shea butter', grams: '20', reason: 'The beaker fell' }]);
    expect(at.additionAt(view, 0)).toMatchObject({ inGrams: '0', leftGrams: '520', done: null });
    await makeAll(at.bench, batch.id);
    const made = await at.bench.get('finishBatch', { params: { id: batch.id }, body: { yieldGrams: '790' } });
    expect(made.outcome).toMatchObject({ inputGrams: '800', lossGrams: '10' });
    expect(await onHand(at.shop.lots.shea)).toBe('1460');
  });

  it('after it was entered strikes that weighing in the same entry', async () => {
    const batch = await startBase();
    const entered = await weigh(batch, 0, '520');
    const entryId = entered.ok ? entered.value.entryId : '';
    const spilt = await spill(batch, { grams: '45', entryId });
    expect(spilt.ok).toBe(true);
    expect(await firstOf(batch.id)).toMatchObject({ inGrams: '0', done: null, entries: [] });
    expect((await viewOf(batch.id)).struck).toMatchObject([{ why: 'The beaker fell' }]);
    // 520 g went back to the tub but for the 45 g that lie on the floor.
    expect(await onHand(at.shop.lots.shea)).toBe('1955');
    expect(codesOf(await spill(batch, { entryId }))).toEqual(['entry-struck-already']);
  });

  it('strikes nothing but a weighing of its own line, and is of what goes in there', async () => {
    const batch = await startBase();
    const entered = await weigh(batch, 1, '280');
    const entryId = entered.ok ? entered.value.entryId : '';
    expect(codesOf(await spill(batch, { entryId, lotId: at.shop.lots.shea }))).toEqual(['thing-not-found']);
    expect(codesOf(await spill(batch, { lotId: at.shop.lots.oil }))).toEqual(['lot-of-another-item']);
    expect(await onHand(at.shop.lots.oil)).toBe('720');
  });

  it('may be struck: the lot has it again, and nothing of it was ever in the batch', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '520');
    const spilt = await spill(batch, { grams: '520' });
    const entryId = spilt.ok ? (spilt.value.spills[0]?.entryId ?? '') : '';
    expect(await onHand(at.shop.lots.shea)).toBe('960');
    const params = { id: batch.id };
    const view = await at.bench.get('strikeAddition', { params, body: { entryId, reason: '5.2 g' } });
    expect(view.spills).toEqual([]);
    expect(view.struck).toMatchObject([
      { what: expect.stringMatching(/^Shea butter: 520.g spilt of lot L-0001$/), why: '5.2 g', screen: 0 },
    ]);
    expect(at.additionAt(view, 0)).toMatchObject({ done: { actualGrams: '520' } });
    expect(await onHand(at.shop.lots.shea)).toBe('1480');
  });

  it('cannot be more than the lot has', async () => {
    const batch = await startBase();
    expect(codesOf(await spill(batch, { grams: '2000.1' }))).toEqual(['lot-too-small']);
    expect((await spill(batch, { grams: '2000' })).ok).toBe(true);
  });
});

describe('what there is no more of', () => {
  it('ends a position that was weighed in parts, with what and why', async () => {
    const batch = await startBase();
    const body = { position: 0, deviation: { what: 'Only 480 g', why: 'No other lot' } };
    const close = () => at.bench.ask('closeAddition', { params: { id: batch.id }, body });
    expect(codesOf(await close())).toEqual(['nothing-weighed-yet']);
    await weigh(batch, 0, '480', { isPart: true });
    expect((await close()).ok).toBe(true);
    expect(await firstOf(batch.id)).toMatchObject({
      leftGrams: '0',
      done: { actualGrams: '480', verdict: 'low' },
    });
    expect(codesOf(await close())).toEqual(['addition-done-already']);
    expect((await at.bench.get('listBatches'))[0]?.screensDone).toBe(1);
    expect((await viewOf(batch.id)).deviations).toMatchObject([{ what: 'Only 480 g' }]);
  });
});

describe('another material instead', () => {
  const instead = { deviation: { what: 'Mango butter', why: 'No shea left' }, isSubstitute: true };
  async function buildMango(): Promise<string> {
    const mango = await buildIngredient(at.bench, { name: 'Mango butter' });
    return buildLot(at.bench, mango, { bestBefore: '2028-01-31' });
  }

  it('goes into a trial where a person says so, and stands there by its own name', async () => {
    const lotId = await buildMango();
    const batch = await startTrial();
    expect(codesOf(await weigh(batch, 0, '520', { lotId }))).toEqual(['lot-of-another-item']);
    expect((await weigh(batch, 0, '520', { lotId, ...instead })).ok).toBe(true);
    expect((await firstOf(batch.id)).done).toMatchObject({ substitute: 'Mango butter', actualGrams: '520' });
    expect(await onHand(lotId)).toBe('480');
  });

  it('does not go into a batch for sale, whatever is said', async () => {
    const lotId = await buildMango();
    const batch = await startBase();
    expect(codesOf(await weigh(batch, 0, '520', { lotId, ...instead }))).toEqual(['substitute-not-for-sale']);
  });

  it('is no tin', async () => {
    const batch = await startTrial();
    expect(codesOf(await weigh(batch, 0, '5', { lotId: at.shop.lots.tin, ...instead }))).toEqual([
      'lot-of-another-item',
    ]);
  });
});

describe('a reading that looks like a slip', () => {
  it('is asked about before it counts, and the answer stays with it', async () => {
    const batch = await startBase();
    const refused = await weigh(batch, 0, '52');
    expect(refused.ok || refused.problems[0]).toMatchObject({
      code: 'reading-doubtful',
      parameters: { kind: 'reading-ten-times', gramsThen: '520' },
    });
    expect(await onHand(at.shop.lots.shea)).toBe('2000');
    const deviation = { what: 'A tenth of it', why: 'To try it' };
    expect(codesOf(await weigh(batch, 0, '52', { isReadingSure: true }))).toEqual(['weight-outside-band']);
    await weigh(batch, 0, '52', { isReadingSure: true, deviation });
    expect((await firstOf(batch.id)).done?.reading).toEqual({
      asked: { kind: 'reading-ten-times', wasGrams: null },
      vessel: null,
    });
  });

  it('keeps what was read first where it is put right', async () => {
    const batch = await startBase();
    const readingWas = { kind: 'reading-ten-times', wasGrams: '52' };
    await weigh(batch, 0, '520', { readingWas });
    expect((await firstOf(batch.id)).done?.reading?.asked).toEqual(readingWas);
  });

  it('is the same figure twice at one place, and not the same target twice', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '250', { isPart: true });
    const again = await weigh(batch, 0, '250', { isPart: true });
    expect(again.ok || again.problems[0]?.parameters).toMatchObject({ kind: 'reading-same-as-last' });
    expect((await weigh(batch, 0, '250', { isPart: true, isReadingSure: true })).ok).toBe(true);
  });

  it('has the tare of the vessel in it', async () => {
    const batch = await startBase();
    const vessel = { grossGrams: '600', tareGrams: '80' };
    expect(codesOf(await weigh(batch, 0, '521', { vessel }))).toEqual(['net-not-gross-less-tare']);
    expect((await weigh(batch, 0, '520', { vessel })).ok).toBe(true);
    // Of the scale is asked what it showed, with the vessel: it holds 2000 g and shows 0.1 g.
    const heavy = { grossGrams: '2000.1', tareGrams: '1720.1' };
    const above = await weigh(batch, 1, '280', { vessel: heavy });
    expect(above.ok || above.problems[0]?.parameters).toMatchObject({ kind: 'reading-above-capacity' });
    const fine = { grossGrams: '600.03', tareGrams: '320.03' };
    const odd = await weigh(batch, 1, '280', { vessel: fine });
    expect(odd.ok || odd.problems[0]?.parameters).toMatchObject({ kind: 'reading-not-a-step' });
    const gross = await weigh(batch, 1, '360');
    expect(gross.ok || gross.problems[0]?.parameters).toMatchObject({
      kind: 'reading-tare-forgotten',
      netGrams: '280',
    });
  });
});

describe('the record on paper', () => {
  it('has each part, each mishap, what was asked about a reading, and who said so', async () => {
    const batch = await startBase();
    const other = await buildLot(at.bench, at.shop.materials.shea, { bestBefore: '2028-01-31' });
    await spill(batch, {});
    await weigh(batch, 0, '300', { isPart: true });
    const deviation = { what: 'The rest from another lot', why: 'The first ran out' };
    await weigh(batch, 0, '259', {
      lotId: other,
      deviation,
      readingWas: { kind: 'reading-ten-times', wasGrams: '25.9' },
    });
    const { upon } = await at.bench.get('offerResize', { params: { id: batch.id }, body: { position: 0 } });
    await at.bench.get('resizeBatch', { params: { id: batch.id }, body: { position: 0, upon } });
    await makeAll(at.bench, batch.id);
    await at.bench.get('finishBatch', { params: { id: batch.id }, body: { yieldGrams: '850' } });
    const { bytes } = (await at.bench.get('getBatchSheet', { params: { id: batch.id } })) as Paper;
    const text = textOfPdf(bytes).replace(/\s+/g, ' ');
    for (const word of [
      '300',
      '259',
      'Shea butter: 20 g spilt of lot L-0001',
      'The beaker fell',
      'Made larger, from 800 to 860 g, so that the',
      'Read as 25.9 g first',
    ])
      expect(text).toContain(word);
  });
});
