import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  inTins,
  type MakingBench,
  makeBatch,
  makeFirmBase,
  reviseBase,
} from '../../../test/workshop/build-making.ts';
import {
  answerOf,
  buildOrder,
  buildTins,
  fillTins,
  nameWorkshop,
} from '../../../test/workshop/build-order.ts';
import { buildLot } from '../../../test/workshop/build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { exact } from '../../core/quantity/index.ts';
import { say } from '../../words/index.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  // Thursday 26 November 2026, 08:05.
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
});
afterEach(() => bench.close());

const order = (units: number, wantedBy?: string) =>
  buildOrder(bench, shop.product, units, wantedBy ? { wantedBy } : {});
/** Whatever stands of a material is gone. */
const useUp = async (part: 'lid' | 'tin' | 'scent', left = '0') => {
  const body = {
    reason: 'Counted anew',
    ...(part !== 'scent' ? { pieces: Number(left) } : { grossGrams: left, tareGrams: '0' }),
  };
  await bench.get('countLot', { params: { id: shop.lots[part] }, body });
};

describe('the promise of an order', () => {
  it('goes today from tins that stand there', async () => {
    await makeFirmBase(bench, shop, '600');
    await buildTins(bench, shop, 7);
    const answer = await answerOf(bench, await order(5));
    expect(answer).toMatchObject({
      answer: 'yes',
      earliest: { from: '2026-11-26', to: '2026-11-26' },
      short: [],
      steps: [],
      says: 'Can go out today: 5 tins needed, 7 put aside for it or free on the shelf.',
    });
  });

  it('says before it is entered which orders it would make late, and none where there is enough', async () => {
    await makeFirmBase(bench, shop, '600');
    await buildTins(bench, shop, 7);
    const later = await order(5, '2026-11-28');
    const number = (await bench.get('getOrder', { params: { id: later } })).number;
    await useUp('lid');
    const preview = (units: number) =>
      bench.get('previewPromise', {
        body: { wantedBy: '2026-11-27', lines: [{ productId: shop.product, units }] },
      });
    expect((await preview(2)).makesLate).toEqual([]);
    expect((await preview(3)).makesLate).toEqual([number]);
  });

  it('adds up no tins of different products, and none that an earlier order needs', async () => {
    await makeFirmBase(bench, shop, '900');
    await buildTins(bench, shop, 7);
    const line = (productId: string, units: number) => ({ productId, units });
    await buildTins(bench, shop, 4, {
      productId: shop.smallProduct,
      grossGrams: '28.30',
      tareGrams: '8.2',
    });
    await order(5, '2026-11-27');
    const second = await order(2, '2026-11-28');
    expect((await answerOf(bench, second)).says).toBe(
      'Can go out today: 2 tins needed, 2 put aside for it or free on the shelf.',
    );
    const { version } = await bench.get('getOrder', { params: { id: second } });
    await bench.get('cancelOrder', { params: { id: second }, body: { version, reason: 'Changed' } });
    const lines = [line(shop.product, 2), line(shop.smallProduct, 1)];
    const body = { customerId: null, placedOn: '2026-11-20', wantedBy: '2026-11-28', note: '', lines };
    const { id } = await bench.get('saveOrder', { body });
    expect((await answerOf(bench, id)).says).toBe(
      'Can go out today: 3 tins of 2 products needed, and all of them stand on the shelf.',
    );
  });

  it('goes once filled tins are released', async () => {
    await makeFirmBase(bench, shop, '600');
    await fillTins(bench, shop, 5);
    const answer = await answerOf(bench, await order(5));
    expect(answer.answer).toBe('yes');
    expect(answer.says).toBe('Can go out today once 5 filled tins are released: 5 tins needed.');
    expect(answer.steps.map((step) => say(step.what))).toEqual(['Release 5 filled tins of Lavender butter']);
  });

  it('goes from a bowl that is still to be filled, and takes a batch under way for one', async () => {
    await makeFirmBase(bench, shop, '250');
    const id = await order(5);
    const wish = inTins(shop.mixtureRevision, [{ productId: shop.product, units: 5 }]);
    const started = await bench.get('startBatch', { body: { wish } });
    const begun = await answerOf(bench, id);
    expect([begun.answer, begun.short]).toEqual(['yes', []]);
    await bench.get('abandonBatch', { params: { id: started.id }, body: { reason: 'Begun anew' } });
    await makeBatch(bench, wish);
    const made = await answerOf(bench, id);
    expect(made.answer).toBe('yes');
    expect(made.steps.map((step) => say(step.what))).toContain(
      'Fill 5 tins of Lavender butter from the bowl',
    );
  });

  it('goes on the day on which a firm base is made and filled', async () => {
    await makeFirmBase(bench, shop, '600');
    const answer = await answerOf(bench, await order(5));
    expect(answer.answer).toBe('yes');
    expect(answer.says).toBe(
      'Can go out today, made and filled the same day: 5 tins needed, 40 empty ones on the shelf.',
    );
  });

  it('says between when and when the base that sets should be firm', async () => {
    await makeBatch(bench, inGrams(shop.baseRevision, '600'));
    const answer = await answerOf(bench, await order(5));
    expect(answer).toMatchObject({ answer: 'yes', earliest: { from: '2026-11-26', to: '2026-11-27' } });
    expect(answer.says).toBe(
      'Can go out tomorrow: Quiet base should be firm between this evening and tomorrow morning; 5 tins needed, 40 empty ones on the shelf.',
    );
  });

  it('counts a base that is still to be melted from now on', async () => {
    const answer = await answerOf(bench, await order(5, '2026-12-04'));
    expect(answer).toMatchObject({ answer: 'yes', earliest: { from: '2026-11-26', to: '2026-11-27' } });
    expect(answer.says).toBe(
      'Can go out tomorrow if Quiet base is melted today: it should be firm between this evening and tomorrow morning; 5 tins needed, 40 empty ones on the shelf.',
    );
  });

  it('asks for a word once the base should be firm', async () => {
    await makeBatch(bench, inGrams(shop.baseRevision, '600'));
    bench.setClock('2026-11-27T08:05:00Z');
    const answer = await answerOf(bench, await order(5));
    expect(answer.says).toBe(
      'Can go out today once somebody says that Quiet base is firm: it should be by now; 5 tins needed, 40 empty ones on the shelf.',
    );
  });

  it('is judged on the longest setting time: on its last minute of the day yes, a minute later no', async () => {
    // Made at 23:59 it is firm at 23:59 of the day after at the longest; made at midnight, on the day after that.
    bench.setClock('2026-11-26T23:59:00Z');
    await makeBatch(bench, inGrams(shop.baseRevision, '600'));
    const id = await order(5);
    expect(await answerOf(bench, id)).toMatchObject({
      answer: 'yes',
      earliest: { from: '2026-11-27', to: '2026-11-27' },
    });
  });

  it('says so where it could be firm in time and is not sure to be', async () => {
    bench.setClock('2026-11-27T00:00:00Z');
    await makeBatch(bench, inGrams(shop.baseRevision, '600'));
    const answer = await answerOf(bench, await order(5));
    expect(answer).toMatchObject({ answer: 'no', earliest: { from: '2026-11-27', to: '2026-11-28' } });
    expect(answer.says).toBe(
      'Not surely by today: Quiet base may be firm as early as noon today, but at the longest only tonight.',
    );
  });

  it('is no where even the shortest setting time is too long', async () => {
    bench.setClock('2026-11-27T18:00:00Z');
    const answer = await answerOf(bench, await order(5));
    expect(answer).toMatchObject({ answer: 'no', earliest: { from: '2026-11-28', to: '2026-11-28' } });
    expect(answer.says).toContain('Not by today: Quiet base should be firm between');
  });

  it('names what has to be bought, how long that takes, and the day it comes to', async () => {
    await makeFirmBase(bench, shop, '600');
    await useUp('lid', '2');
    const answer = await answerOf(bench, await order(5));
    expect(answer).toMatchObject({ answer: 'no', earliest: null });
    expect(answer.short).toEqual([
      {
        itemKind: 'material',
        itemId: shop.materials.lid,
        name: 'Lid',
        need: '5',
        have: '2',
        short: '3',
        unit: 'pieces',
        onItsWay: null,
        onShelf: '2',
        promisedTo: [],
      },
    ]);
    expect(answer.says).toBe(
      'Not before Lid is bought: 3 of Lid are short; delivery takes 3 days, so Sunday 29 November at the earliest if ordered today.',
    );
    expect(answer.steps.find(({ what }) => what.code === 'promise-step-buy')?.action?.to).toBe('/#buy');
  });

  it('names what lacks most of what it needs, whichever was looked at first, and how long the last of it takes', async () => {
    await makeFirmBase(bench, shop, '600');
    await useUp('lid', '2');
    await useUp('tin', '1');
    const { version, details } = await bench.get('getMaterial', { params: { id: shop.materials.lid } });
    const id = shop.materials.lid;
    await bench.get('saveMaterial', { body: { id, version, details: { ...details, leadDays: 4 } } });
    expect((await answerOf(bench, await order(5))).says).toBe(
      'Not before 60 ml tin is bought: 4 of 60 ml tin are short; the longest delivery takes 4 days, so Monday 30 November at the earliest if ordered today. 1 other thing is short too.',
    );
  });

  describe('with goods on their way', () => {
    const mark = (expectedOn: string | null, orderedOn = '2026-11-25') =>
      bench.get('markOrdered', {
        params: { id: shop.materials.lid },
        body: { orderedOn, supplier: 'Test Tins', expectedOn },
      });
    beforeEach(async () => {
      await makeFirmBase(bench, shop, '600');
      await useUp('lid', '2');
    });

    it('goes by the day on which they are expected, and does not ask to buy them again', async () => {
      const id = await order(5, '2026-12-10');
      await mark('2026-12-04');
      const answer = await answerOf(bench, id);
      expect(answer.says).toBe(
        'Not before Lid comes: 3 of Lid are short. It was ordered on 25 November from Test Tins, and is expected Friday 4 December.',
      );
      expect([answer.answer, answer.orderBy]).toEqual(['if-ordered', null]);
      expect(answer.short).toMatchObject([
        { onItsWay: { orderedOn: '2026-11-25', supplier: 'Test Tins', expectedOn: '2026-12-04' } },
      ]);
      expect(answer.steps.map((step) => say(step.what))).toContain('Wait for 3 of Lid: it is ordered');
    });

    it('is in time on the day wanted, and not the day after it', async () => {
      await mark('2026-12-04');
      expect((await answerOf(bench, await order(5, '2026-12-04'))).answer).toBe('if-ordered');
      expect((await answerOf(bench, await order(5, '2026-12-03'))).answer).toBe('no');
    });

    it('counts the usual delivery from the day of ordering where no day was named', async () => {
      const id = await order(5, '2026-12-10');
      await mark(null);
      expect((await answerOf(bench, id)).says).toContain(
        'and nobody has said when it comes: Saturday 28 November at the earliest.',
      );
    });

    it('names no day once the one expected is past', async () => {
      const id = await order(5, '2026-12-10');
      await mark('2026-11-25');
      const { says, answer } = await answerOf(bench, id);
      expect(says).toMatch(/and was expected Wednesday 25 November\.$/);
      expect(answer).not.toBe('yes');
    });
  });

  it('can go if what is short is ordered by the last day that leaves time for its delivery', async () => {
    await makeFirmBase(bench, shop, '600');
    await useUp('lid', '2');
    // Three days for lids: ordered today they are here on the 29th, made and filled the same day.
    const justSo = await answerOf(bench, await order(5, '2026-11-29'));
    expect([justSo.answer, justSo.orderBy]).toEqual(['if-ordered', '2026-11-26']);
    expect(justSo.says).toBe(
      'Can go by Sunday 29 November if Lid is ordered by today: 3 of Lid are short; delivery takes 3 days, so Sunday 29 November at the earliest if ordered today.',
    );
    const later = await answerOf(bench, await order(5, '2026-12-07'));
    expect([later.answer, later.orderBy]).toEqual(['if-ordered', '2026-12-04']);
    expect(later.says).toMatch(/^Can go by Monday 7 December if Lid is ordered by Friday 4 December: /);
    expect((await answerOf(bench, await order(1, '2026-11-28'))).answer).toBe('yes');
  });

  it('leaves time for a base that sets while what is short is on its way', async () => {
    bench.setClock('2026-11-28T08:00:00Z');
    await useUp('lid', '2');
    // The base sets until the 29th at the longest, the lids come after it: it does not bring their day forward.
    const answer = await answerOf(bench, await order(5, '2026-12-02'));
    expect([answer.answer, answer.orderBy]).toEqual(['if-ordered', '2026-11-29']);
  });

  it('fills no tin before the last of its packaging has come, and makes the mixture on that day', async () => {
    await makeFirmBase(bench, shop, '600');
    await useUp('lid', '2');
    const { steps } = await answerOf(bench, await order(5, '2026-12-07'));
    expect(steps.map((step) => [say(step.what), step.when && say(step.when)])).toEqual([
      ['Buy 3 of Lid', 'ordered today, it is here Sunday 29 November'],
      [expect.stringMatching(/^Make [\d.]+ g of Lavender butter$/), 'Sunday 29 November'],
      ['Fill 5 tins of Lavender butter, the same day as it is made', 'Sunday 29 November'],
    ]);
    expect(steps.map((step) => step.action?.to)).toEqual([
      '/#buy',
      `/making/new?product=${shop.product}&units=5`,
      undefined,
    ]);
  });

  it('says what can be done now and what is overdue, and no step in the past', async () => {
    const made = await makeBatch(bench, inGrams(shop.baseRevision, '600'));
    bench.setClock('2026-11-26T22:00:00Z');
    const whenOf = async (id: string) => {
      const { steps } = await answerOf(bench, id);
      return steps.map((step) => [step.when && say(step.when), step.action?.to]);
    };
    const id = await order(5, '2026-12-07');
    expect((await whenOf(id))[0]).toEqual([
      'it may be firm already, at the longest tomorrow morning',
      `/shelf/lots/${made.lotId}`,
    ]);
    bench.setClock('2026-11-28T08:05:00Z');
    expect((await whenOf(id))[0]).toEqual([
      'now: its longest setting time is over',
      `/shelf/lots/${made.lotId}`,
    ]);
    expect((await whenOf(id))[1]?.[0]).toBe('today');
  });

  it('speaks of a base that is still to be melted in hours that it sets and in days', async () => {
    const { steps } = await answerOf(bench, await order(5, '2026-12-07'));
    expect(
      steps.map((step) => [say(step.what).replace(/[\d.]+ g/, 'so much'), step.when && say(step.when)]),
    ).toEqual([
      ['Make so much of Quiet base', 'today'],
      [
        'Quiet base sets for 12 to 24 hours, and a person says that it is firm',
        'firm between this evening and tomorrow morning',
      ],
      ['Make so much of Lavender butter', 'today, or tomorrow at the longest'],
      ['Fill 5 tins of Lavender butter, the same day as it is made', 'today, or tomorrow at the longest'],
    ]);
    expect(steps[0]?.action?.to).toContain(`/making/new?formula=${shop.base}&grams=`);
  });

  it('says how much of what is short is promised to others', async () => {
    await makeFirmBase(bench, shop, '1900');
    await useUp('lid', '29');
    await buildLot(bench, shop.materials.tin, { quantity: '20', bestBefore: null });
    const first = await order(20, '2026-11-27');
    const second = await order(9, '2026-11-28');
    const numbers = [];
    for (const id of [first, second]) numbers.push((await bench.get('getOrder', { params: { id } })).number);
    const third = await answerOf(bench, await order(15, '2026-12-07'));
    expect(third.short).toMatchObject([
      { name: 'Lid', need: '15', have: '0', onShelf: '29', promisedTo: numbers },
    ]);
  });

  it('names no day where nobody has said how long delivery takes', async () => {
    await makeFirmBase(bench, shop, '600');
    await useUp('lid', '2');
    const { version, details } = await bench.get('getMaterial', { params: { id: shop.materials.lid } });
    const id = shop.materials.lid;
    await bench.get('saveMaterial', { body: { id, version, details: { ...details, leadDays: null } } });
    const answer = await answerOf(bench, await order(5));
    expect(answer.answer).toBe('not-known');
    expect(answer.says).toBe('Not known: 3 of Lid are short, and nobody has said how long delivery takes.');
    expect(answer.steps.map((step) => step.when && say(step.when))).toEqual([
      'nobody has said how long delivery takes',
      'once what is short has come',
      'once what is short has come',
    ]);
  });

  it('suffices where a material just suffices, and not where a microgram lacks', async () => {
    await makeFirmBase(bench, shop, '600');
    const id = await order(5);
    // The batch as the bench plans it; 1 % of it is scent, by the recipe.
    const plan = await bench.get('planBatch', {
      body: inTins(shop.mixtureRevision, [{ productId: shop.product, units: 5 }]),
    });
    const needed = exact(plan.batchGrams).div(100);
    await useUp('scent', needed.toFixed());
    expect((await answerOf(bench, id)).short).toEqual([]);
    await useUp('scent', needed.minus('0.000001').toFixed());
    expect((await answerOf(bench, id)).short.map((row) => row.name)).toEqual(['Lavender oil']);
  });

  it('counts nothing that may not be used: held, blocked, made as a trial', async () => {
    const id = await order(5);
    const batch = inGrams(shop.baseRevision, '600', { purpose: 'trial' });
    const trial = await makeBatch(bench, batch);
    await bench.get('sayFirm', { params: { id: trial.lotId ?? '' }, body: { remark: 'Cold.' } });
    await useUp('lid');
    await buildLot(bench, shop.materials.lid, { quantity: '50', bestBefore: null, accept: false });
    const blocked = await buildLot(bench, shop.materials.lid, { quantity: '50', bestBefore: null });
    const body = { status: 'blocked' as const, reason: 'Wrong size' };
    await bench.get('setLotStatus', { params: { id: blocked }, body });
    const answer = await answerOf(bench, id);
    expect(answer.short.map((row) => [row.name, row.have])).toEqual([['Lid', '0']]);
    const steps = () => answer.steps.map((step) => say(step.what));
    expect(steps().some((said) => /^Make [\d.]+ g of Quiet base$/.test(said))).toBe(true);
  });

  it('is late once its day is past, though it can go today', async () => {
    await makeFirmBase(bench, shop, '600');
    await buildTins(bench, shop, 5);
    const answer = await answerOf(bench, await order(5, '2026-11-25'));
    expect(answer.answer).toBe('no');
    expect(answer.says).toBe(
      'Late, it was wanted by Wednesday 25 November: it can go today: 5 tins needed, 5 put aside for it or free on the shelf.',
    );
  });

  it('is not known where nobody has written down how it is made', async () => {
    const { id } = await bench.get('saveFormula', {
      body: { name: 'Later butter', code: 'LX', kind: 'mixture' },
    });
    const [first] = await bench.get('listProducts');
    if (!first) throw new Error('the bench sells something');
    const details = { ...first.details, name: 'Later butter', formulaId: id };
    const product = await bench.get('saveProduct', { body: { details } });
    const answer = await answerOf(bench, await buildOrder(bench, product.id, 2));
    expect(answer).toMatchObject({ answer: 'not-known', earliest: null });
    expect(answer.says).toBe('Not known: nobody has written down how Later butter is made.');
  });

  it('is sent once it is sent, and cancelled once it is cancelled', async () => {
    await makeFirmBase(bench, shop, '600');
    await buildTins(bench, shop, 5);
    const id = await order(5);
    await bench.get('dispatchOrder', { params: { id }, body: {} });
    expect(await answerOf(bench, id)).toMatchObject({ answer: 'sent', says: 'Everything in it is sent.' });
    const other = await order(5);
    await bench.get('cancelOrder', {
      params: { id: other },
      body: { version: 1, reason: 'Changed their mind' },
    });
    expect((await answerOf(bench, other)).answer).toBe('cancelled');
  });
});

describe('an order of what may not be made for sale', () => {
  /** A second revision with 2 % of scent, where the report allows 1.5. */
  const overReport = async () => {
    const params = { id: shop.mixture };
    const { latest } = await bench.get('getFormula', { params });
    if (!latest) throw new Error('the mixture has a revision');
    const grams = ['980', '20'];
    const lines = latest.details.lines.map((each, index) => ({ ...each, grams: grams[index] ?? each.grams }));
    const body = { version: latest.version, details: { ...latest.details, lines } };
    await bench.get('saveRevision', { params, body });
  };

  it('is no promise, names the revision and leads to its check', async () => {
    await makeFirmBase(bench, shop, '900');
    await buildTins(bench, shop, 3);
    await overReport();
    const answer = await answerOf(bench, await order(12));
    expect(answer).toMatchObject({ answer: 'not-for-sale', earliest: null, tinsReady: 3 });
    expect(answer.says).toBe(
      'Cannot be promised: 9 tins have to be made, and Lavender butter, revision 2, may not be made for sale. Its check says why. 3 finished tins can go.',
    );
    expect(answer.notForSale).toMatchObject([
      { formulaId: shop.mixture, name: 'Lavender butter', number: 2 },
    ]);
    expect(answer.notForSale[0]?.reasons.map((reason) => reason.code)).toContain('sale-report-over');
    expect(answer.steps.map((step) => [step.what.code, step.action?.to])).toEqual([
      ['order-step-check', `/formulas/${shop.mixture}/check`],
    ]);
  });

  it('asks the check that the start of a batch asks', async () => {
    await makeFirmBase(bench, shop, '900');
    await overReport();
    const { notForSale } = await answerOf(bench, await order(5));
    const { latest } = await bench.get('getFormula', { params: { id: shop.mixture } });
    const plan = await bench.get('planBatch', {
      body: inTins(latest?.id ?? '', [{ productId: shop.product, units: 5 }]),
    });
    expect(notForSale[0]?.reasons).toEqual(plan.hindrances);
  });

  it('counts finished tins as before, and previews alike', async () => {
    await makeFirmBase(bench, shop, '600');
    await buildTins(bench, shop, 5);
    await overReport();
    expect((await answerOf(bench, await order(5))).answer).toBe('yes');
    const body = { wantedBy: '2026-11-27', lines: [{ productId: shop.product, units: 1 }] };
    expect((await bench.get('previewPromise', { body })).answer).toBe('not-for-sale');
  });

  it('is none either where a base has to be melted that may not be made for sale', async () => {
    await reviseBase(bench, shop, ['650', '350']);
    const { latest } = await bench.get('getFormula', { params: { id: shop.base } });
    const details = latest?.details;
    if (!latest || !details) throw new Error('the base has a revision');
    const body = { version: latest.version, details: { ...details, standing: 'trial' as const } };
    await bench.get('saveRevision', { params: { id: shop.base }, body });
    const answer = await answerOf(bench, await order(5));
    expect(answer.answer).toBe('not-for-sale');
    expect(answer.notForSale.map((row) => row.formulaId)).toContain(shop.base);
  });

  it('says what is short all the same, and advises to make or melt nothing for it', async () => {
    await overReport();
    await useUp('lid', '2');
    const answer = await answerOf(bench, await order(5, '2026-12-07'));
    expect(answer.short.map((row) => row.name)).toEqual(['Lid']);
    expect(answer.steps.map((step) => step.what.code)).toEqual(['order-step-check', 'promise-step-buy']);
    const { makeNext } = await bench.get('getMorning');
    expect(makeNext.map((line) => line.key)).toEqual([`make ${shop.product} barred`]);
  });

  it('waits for a decision where something is not known', async () => {
    bench.close();
    bench = await openTestWorkshop();
    shop = await buildMakingBench(bench, { isDecided: false });
    const answer = await answerOf(bench, await order(5));
    expect(answer.answer).toBe('not-for-sale');
    expect(answer.notForSale[0]?.reasons.map((reason) => reason.code)).toContain('sale-unknown');
  });

  it('is none once the day of its report is past', async () => {
    bench.setClock('2028-10-02T08:00:00Z');
    const answer = await answerOf(bench, await order(5, '2028-12-01'));
    expect(answer.notForSale[0]?.reasons.map((reason) => reason.code)).toContain('sale-report-review-passed');
  });
});

describe('orders that compete', () => {
  it('gives finished tins to the earlier promised, then to the lower number', async () => {
    await makeFirmBase(bench, shop, '195');
    await buildTins(bench, shop, 5);
    await useUp('lid');
    const later = await order(4, '2026-11-30');
    const second = await order(4, '2026-11-28');
    const first = await order(1, '2026-11-28');
    const answers = await bench.get('listOrders');
    const answerTo = (id: string) => answers.find((row) => row.id === id)?.promise;
    expect(answerTo(second)?.answer).toBe('yes');
    expect(answerTo(first)?.answer).toBe('yes');
    expect(answerTo(later)?.answer).not.toBe('yes');
    expect(answerTo(later)?.short.find((row) => row.name === 'Lid')).toMatchObject({ need: '4', have: '0' });
  });

  it('answers one order as it answers it among all', async () => {
    await makeFirmBase(bench, shop, '400');
    await buildTins(bench, shop, 3);
    for (const [units, day] of [
      [4, 28],
      [2, 27],
      [9, 29],
    ] as const)
      await order(units, `2026-11-${day}`);
    for (const { promise, ...row } of await bench.get('listOrders')) {
      const { promise: alone } = await bench.get('getOrder', { params: { id: row.id } });
      expect(alone).toEqual(promise);
    }
  });

  it('leaves tins that are kept for another order to that order', async () => {
    await makeFirmBase(bench, shop, '195');
    await buildTins(bench, shop, 5);
    const kept = await order(5, '2026-12-24');
    await bench.get('reserveOrder', { params: { id: kept }, body: {} });
    await useUp('lid');
    expect((await answerOf(bench, await order(1, '2026-11-27'))).short.map((row) => row.name)).toContain(
      'Lid',
    );
    expect((await answerOf(bench, kept)).answer).toBe('yes');
  });

  it('previews an order after those for the same day, and a changed one in its own place', async () => {
    await makeFirmBase(bench, shop, '195');
    await buildTins(bench, shop, 5);
    await useUp('lid');
    const id = await order(3, '2026-11-28');
    const preview = (units: number, orderId?: string) =>
      bench.get('previewPromise', {
        body: {
          wantedBy: '2026-11-28',
          lines: [{ productId: shop.product, units }],
          ...(orderId && { orderId }),
        },
      });
    expect((await preview(2)).answer).toBe('yes');
    expect((await preview(3)).answer).not.toBe('yes');
    expect((await preview(5, id)).answer).toBe('yes');
    expect((await preview(6, id)).answer).not.toBe('yes');
  });

  it('previews what is added to an order that was sent', async () => {
    await makeFirmBase(bench, shop, '195');
    await buildTins(bench, shop, 5);
    const id = await order(3, '2026-11-28');
    await bench.get('dispatchOrder', { params: { id }, body: {} });
    const lines = [{ productId: shop.product, units: 5 }];
    const body = { wantedBy: '2026-11-28', lines, orderId: id };
    const { sentence } = await bench.get('previewPromise', { body });
    expect(say(sentence)).toBe('Can go out today: 2 tins needed, 2 put aside for it or free on the shelf.');
  });

  it('refuses to answer for what is not there', async () => {
    const body = { wantedBy: '2026-11-28', lines: [{ productId: 'none', units: 1 }], orderId: 'neither' };
    expect(await bench.ask('previewPromise', { body })).toMatchObject({
      ok: false,
      problems: [
        { code: 'thing-not-found', where: 'orderId' },
        { code: 'thing-not-found', where: 'lines[0].productId' },
      ],
    });
  });
});
