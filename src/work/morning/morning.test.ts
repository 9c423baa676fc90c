import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  inTins,
  type MakingBench,
  makeBatch,
  makeFirmBase,
} from '../../../test/workshop/build-making.ts';
import { buildOrder, buildTins, fillTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import type { trace } from '../../contract/index.ts';
import { say } from '../../words/index.ts';

let bench: TestWorkshop;
let shop: MakingBench;

/** A morning as it is read: each line with its state, its words and where its tap leads. */
async function morning() {
  const { sentence, sendToday, makeNext, buyThisWeek } = await bench.get('getMorning');
  const read = (lines: readonly trace.MorningLine[]) =>
    lines.map(({ title, state, stateWord, detail, action }) => ({
      title,
      state,
      word: say(stateWord),
      detail: detail.map((one) => say(one)),
      act: action && say(action.words),
      to: action?.to,
    }));
  return { says: say(sentence), send: read(sendToday), make: read(makeNext), buy: read(buyThisWeek) };
}

describe('the morning of an empty workshop', () => {
  beforeEach(async () => {
    bench = await openTestWorkshop();
  });
  afterEach(() => bench.close());

  it('says what comes first, and nothing else', async () => {
    expect(await morning()).toEqual({
      says: 'A new workshop: begin with the first steps below.',
      send: [],
      make: [],
      buy: [],
    });
  });

  it('goes on to the shelf once something is entered', async () => {
    await buildIngredient(bench);
    expect((await morning()).says).toBe('Count what stands on the shelf: weigh each tub, count the tins.');
  });
});

describe('the morning', () => {
  beforeEach(async () => {
    // Thursday 26 November 2026, 08:05.
    bench = await openTestWorkshop();
    shop = await buildMakingBench(bench);
    await nameWorkshop(bench);
  });
  afterEach(() => bench.close());

  const order = (units: number, wantedBy?: string) =>
    buildOrder(bench, shop.product, units, wantedBy ? { wantedBy } : {});

  it('is quiet where nothing is ordered', async () => {
    expect(await morning()).toEqual({ says: 'Nothing is pressing.', send: [], make: [], buy: [] });
  });

  it('sends what is covered by kept and free tins', async () => {
    await makeFirmBase(bench, shop, '500');
    await buildTins(bench, shop, 8);
    const kept = await order(5);
    await bench.get('reserveOrder', { params: { id: kept }, body: {} });
    const free = await order(3, '2026-12-24');
    const { says, send } = await morning();
    expect(says).toBe('2 parcels can go today. Nothing else is pressing.');
    expect(send.map((line) => [line.title, line.state, line.act, line.to])).toEqual([
      ['Order 101', 'ready', 'Pick and send', `/orders/${kept}`],
      ['Order 102', 'ready', 'Pick and send', `/orders/${free}`],
    ]);
  });

  it('names its customer, and stops at an order of today that cannot go', async () => {
    const { id: customerId } = await bench.get('saveCustomer', { body: { name: 'C. Buyer', address: '' } });
    const id = await buildOrder(bench, shop.product, 2, { wantedBy: '2026-11-26', customerId });
    await order(2, '2026-11-27');
    expect((await morning()).send).toEqual([
      {
        title: 'Order 101, C. Buyer',
        state: 'stop',
        word: 'tins are missing',
        detail: [
          'Not surely by today: Quiet base, melted today, may be firm as early as this evening, but at the longest only tomorrow morning.',
          '2 × Lavender butter',
        ],
        act: 'Look',
        to: `/orders/${id}`,
      },
    ]);
  });

  it('counts late orders in its sentence', async () => {
    await makeFirmBase(bench, shop, '500');
    await buildTins(bench, shop, 3);
    await order(5, '2026-11-25');
    await order(2, '2026-11-24');
    expect((await morning()).says).toBe(
      'One parcel can go today. One order is late. Make 4 tins of Lavender butter next.',
    );
  });

  it('says that other tins have to be kept where a lot was stopped', async () => {
    await makeFirmBase(bench, shop, '500');
    const lot = await buildTins(bench, shop, 3);
    const id = await order(3);
    await bench.get('reserveOrder', { params: { id }, body: {} });
    const body = { status: 'blocked' as const, reason: 'A complaint' };
    await bench.get('setLotStatus', { params: { id: lot }, body });
    expect((await morning()).send).toEqual([]);
    await buildTins(bench, shop, 3);
    expect((await morning()).send).toMatchObject([{ state: 'watch', word: 'put others aside', act: 'Look' }]);
  });

  describe('with a base to melt', () => {
    it.each([
      // 24 hours at the longest and a day to fill: for Sunday it has to be begun on Friday.
      ['2026-11-29', 'ready', 'Melt Quiet base by tomorrow, so that order 101 can go by Sunday 29 November.'],
      ['2026-11-28', 'watch', 'Melt Quiet base today, so that order 101 can go by Saturday 28 November.'],
      ['2026-11-27', 'watch', 'Melt Quiet base today, so that order 101 can go by tomorrow.'],
      [
        '2026-11-26',
        'stop',
        'One order cannot go as promised. Melt Quiet base now: order 101, wanted by today, is late at the longest setting time.',
      ],
    ])('for %s says %s', async (wantedBy, state, sentence) => {
      await order(5, wantedBy);
      const { says, make } = await morning();
      expect(says).toBe(sentence);
      expect(make).toHaveLength(2);
      expect(make[1]).toMatchObject({ title: 'Lavender butter', word: 'not yet', act: null });
      expect(make[1]?.detail).toContain('Once Quiet base is firm.');
      expect(make[0]).toMatchObject({ title: 'Quiet base', state, act: 'Melt the base' });
      // As the bench would plan five tins; 99 % of the mixture is base, by the recipe.
      const plan = await bench.get('planBatch', {
        body: inTins(shop.mixtureRevision, [{ productId: shop.product, units: 5 }]),
      });
      const grams = (Math.ceil(Number(plan.batchGrams) * 9.9) / 10).toFixed(1).replace(/\.0$/, '');
      expect(make[0]?.to).toBe(`/making/new?formula=${shop.base}&grams=${grams}`);
    });

    it('keeps to the instant: the last one is in time, the next is late', async () => {
      await order(5, '2026-11-27');
      bench.setClock('2026-11-26T23:59:59.999Z');
      expect((await morning()).make[0]?.state).toBe('watch');
      bench.setClock('2026-11-27T00:00:00.000Z');
      expect((await morning()).make[0]?.state).toBe('stop');
    });
  });

  it('leads with what is due today before a base that can wait', async () => {
    const made = await makeBatch(bench, inGrams(shop.baseRevision, '200'));
    await order(20, '2026-12-07');
    bench.setClock('2026-11-27T08:05:00Z');
    const { lot } = await bench.get('getLot', { params: { id: made.lotId ?? '' } });
    expect((await morning()).says).toBe(`See whether Quiet base, ${lot.number}, is firm.`);
    await bench.get('sayFirm', { params: { id: made.lotId ?? '' }, body: {} });
    const { says, make } = await morning();
    expect(says).toBe(
      'Melt Quiet base by Saturday 5 December, so that order 101 can go by Monday 7 December.',
    );
    expect(make[0]?.detail[0]).toBe(
      'Begin by Saturday 5 December, so that order 101 can go by Monday 7 December.',
    );
  });

  it('advises to make nothing that may not be made for sale, and says so', async () => {
    bench.close();
    bench = await openTestWorkshop();
    shop = await buildMakingBench(bench, { isDecided: false });
    await makeFirmBase(bench, shop, '600');
    await order(5);
    const { says, make } = await morning();
    expect(says).toBe(
      'One order cannot go as promised. Lavender butter is ordered, and Lavender butter, revision 1, may not be made for sale: its check says why.',
    );
    expect(make).toMatchObject([
      { state: 'stop', word: 'may not be made', act: 'See its check', to: `/formulas/${shop.mixture}/check` },
    ]);
    expect(make[0]?.detail).toContain('Lavender butter, revision 1, may not be made for sale.');
  });

  it('says how many tins were filled, and which order waits for how many of them', async () => {
    await makeFirmBase(bench, shop, '600');
    await order(5);
    await fillTins(bench, shop, 6);
    expect((await morning()).make[0]?.detail).toEqual([
      '6 tins filled.',
      'Order 101, wanted by tomorrow, waits for 5 of them.',
    ]);
  });

  it('follows the base from the pot to the word that it is firm', async () => {
    await order(5);
    const started = await bench.get('startBatch', { body: { wish: inGrams(shop.baseRevision, '600') } });
    const tinsToCome = { title: 'Lavender butter', word: 'not yet', act: null };
    expect((await morning()).make).toMatchObject([
      { state: 'going', word: 'being made', act: 'Go on', to: `/making/${started.id}` },
      tinsToCome,
    ]);
    await bench.get('abandonBatch', { params: { id: started.id }, body: { reason: 'Begun anew' } });
    const made = await makeBatch(bench, inGrams(shop.baseRevision, '600'));
    const to = `/shelf/lots/${made.lotId}`;
    const firmAt = async (instant: string) => {
      bench.setClock(instant);
      return (await morning()).make;
    };
    expect(await firmAt('2026-11-26T20:04:59Z')).toMatchObject([
      { state: 'going', word: 'sets', to },
      tinsToCome,
    ]);
    expect(await firmAt('2026-11-26T20:05:00Z')).toMatchObject([
      { state: 'ready', word: 'may be firm', act: 'It is firm', to },
      tinsToCome,
    ]);
    expect(await firmAt('2026-11-27T08:05:00Z')).toMatchObject([
      { word: 'should be firm', act: 'It is firm' },
      tinsToCome,
    ]);
    await bench.get('sayFirm', { params: { id: made.lotId ?? '' }, body: {} });
    expect((await morning()).make).toMatchObject([
      { state: 'watch', act: 'Make 5 tins', to: `/making/new?product=${shop.product}&units=5` },
    ]);
  });

  it('goes from the bowl to the tins and to their release, and asks for nothing twice', async () => {
    await makeFirmBase(bench, shop, '600');
    await order(5);
    expect((await morning()).says).toBe('Make 5 tins of Lavender butter next.');
    const batch = await makeBatch(
      bench,
      inTins(shop.mixtureRevision, [{ productId: shop.product, units: 5 }]),
    );
    const { make } = await morning();
    expect(make).toMatchObject([{ state: 'ready', act: 'Fill it', to: `/making/${batch.id}/fill` }]);
    const run = await bench.get('startRun', {
      body: {
        batchId: batch.id,
        productId: shop.product,
        wanted: 5,
        scaleId: shop.scales.small,
        tareGrams: '11.4',
      },
    });
    const going = await morning();
    expect(going.make).toMatchObject([{ state: 'going', act: 'Go on', to: `/filling/${run.id}` }]);
    expect(going.says).toBe('Go on filling Lavender butter.');
  });

  it('asks for the release of what is filled, and sends it then', async () => {
    await makeFirmBase(bench, shop, '600');
    await order(5);
    const { run } = await fillTins(bench, shop, 5);
    const { make, says, send } = await morning();
    expect(make).toMatchObject([{ state: 'ready', act: 'Look and release', to: `/filling/${run}` }]);
    expect(says).toBe('Lavender butter: filled, and waiting for somebody to release it.');
    expect(send).toEqual([]);
    await bench.get('releaseRun', { params: { id: run }, body: { verdict: 'released', reason: '' } });
    expect(await morning()).toMatchObject({ make: [], send: [{ state: 'ready' }] });
  });

  it('buys what orders are short of before what is low', async () => {
    await makeFirmBase(bench, shop, '600');
    await order(5);
    const id = shop.materials.shea;
    const { version, details } = await bench.get('getMaterial', { params: { id } });
    const under = { ...details, reorderBelow: '5000' };
    await bench.get('saveMaterial', { body: { id, version, details: under } });
    const pieces = { pieces: 2, reason: 'Counted anew' };
    await bench.get('countLot', { params: { id: shop.lots.lid }, body: pieces });
    const { buy, make, says } = await morning();
    expect(buy.map((line) => [line.title, line.state, line.act, line.to])).toEqual([
      ['Lid', 'stop', 'To the shelf', '/shelf'],
      ['Shea butter', 'watch', 'To the shelf', '/shelf'],
    ]);
    expect(buy[0]?.detail).toEqual([
      '3 short: 5 needed for what is ordered, 2 here.',
      'Order 101, wanted by tomorrow, waits for it.',
      'Comes in packs of 100.',
      'Delivery takes 3 days.',
    ]);
    expect(make[0]).toMatchObject({ state: 'stop', word: 'something is short' });
    expect(make[0]?.detail).toContain('Lid has to be bought first.');
    expect(says).toBe('One order cannot go as promised. Buy Lid first.');
  });

  it('lets an order that has all it needs be made, though a later one lacks lids', async () => {
    await makeFirmBase(bench, shop, '1900');
    await order(2);
    await order(30, '2026-12-24');
    const pieces = { pieces: 6, reason: 'Counted anew' };
    await bench.get('countLot', { params: { id: shop.lots.lid }, body: pieces });
    const { make, says } = await morning();
    expect(make.map((line) => [line.word, line.act, line.detail])).toEqual([
      ['everything is here', 'Make 2 tins', ['For order 101, wanted by tomorrow.']],
      [
        'something is short',
        'Make 30 tins',
        ['30 tins to make.', 'For order 102, wanted by Thursday 24 December.', 'Lid has to be bought first.'],
      ],
    ]);
    expect(says).toBe('Make 2 tins of Lavender butter next.');
    const answers = (await bench.get('listOrders')).map((one) => one.promise.answer);
    expect(answers.map((answer) => answer === 'yes')).toEqual([true, false]);
  });

  it('asks for nothing at the level itself, and a microgram below it does', async () => {
    const id = shop.materials.shea;
    const lowAt = async (reorderBelow: string) => {
      const { version, details } = await bench.get('getMaterial', { params: { id } });
      await bench.get('saveMaterial', { body: { id, version, details: { ...details, reorderBelow } } });
      return (await morning()).buy.map((line) => line.title);
    };
    expect(await lowAt('2000')).toEqual([]);
    expect(await lowAt('2000.000001')).toEqual(['Shea butter']);
  });

  describe('what was ordered', () => {
    const mark = (more: Record<string, unknown> = {}) => {
      const body = { orderedOn: '2026-11-25', supplier: 'Test Tins', expectedOn: '2026-12-10', ...more };
      return bench.ask('markOrdered', { params: { id: shop.materials.lid }, body });
    };
    const lids = async () => (await morning()).buy.find((line) => line.title === 'Lid');

    beforeEach(async () => {
      await makeFirmBase(bench, shop, '500');
      await bench.get('countLot', { params: { id: shop.lots.lid }, body: { pieces: 2, reason: 'Counted' } });
      await order(5);
    });

    it('is on its way, and no longer the first thing to buy', async () => {
      expect(await lids()).toMatchObject({ state: 'stop', word: 'short' });
      await mark();
      expect(await lids()).toMatchObject({ state: 'going', word: 'on its way' });
      expect((await lids())?.detail[0]).toBe(
        'Ordered on 25 November from Test Tins, expected Thursday 10 December.',
      );
      const { says, make } = await morning();
      expect(says).not.toContain('Buy Lid');
      expect(make[0]?.detail).toContain('Once Lid has come: it is on its way.');
      expect(make[0]?.detail).not.toContain('Lid has to be bought first.');
    });

    it('should be here once its day is over', async () => {
      await mark({ expectedOn: '2026-11-25' });
      expect(await lids()).toMatchObject({ state: 'watch', word: 'should be here' });
    });

    it('is cleared by goods that come in, though they are too few', async () => {
      await mark();
      const goods = {
        materialId: shop.materials.lid,
        quantity: '1',
        supplierLot: null,
        bestBefore: null,
        accept: true,
      };
      await bench.get('receiveGoods', { body: goods });
      expect(await lids()).toMatchObject({ state: 'stop', word: 'short' });
      await mark({ expectedOn: null });
      expect((await lids())?.detail[0]).toBe(
        'Ordered on 25 November from Test Tins; nobody has said when it comes.',
      );
    });

    it('is taken back by hand, once', async () => {
      await mark();
      const takeBack = () => bench.ask('unmarkOrdered', { params: { id: shop.materials.lid }, body: {} });
      expect((await takeBack()).ok).toBe(true);
      expect(await lids()).toMatchObject({ state: 'stop' });
      expect(codesOf(await takeBack())).toEqual(['nothing-on-its-way']);
    });

    it('refuses a day of ordering to come, and goods that come before they were ordered', async () => {
      expect(codesOf(await mark({ orderedOn: '2026-11-27' }))).toEqual(['ordered-in-future']);
      expect(codesOf(await mark({ expectedOn: '2026-11-24' }))).toEqual(['expected-before-ordered']);
      expect((await mark({ orderedOn: '2026-11-26', expectedOn: '2026-11-26' })).ok).toBe(true);
    });
  });
});
