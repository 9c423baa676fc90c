import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { fillTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { say } from '../../words/index.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
});
afterEach(() => bench.close());

type Body = NonNullable<Parameters<typeof bench.ask<'enterComplaint'>>[1]>['body'];
type Details = NonNullable<Body>['details'];

const details = (more: Partial<Details> = {}): Details => ({
  kind: 'skin-reaction',
  said: 'A red patch on both hands for two days.',
  effect: 'undesirable',
  happenedIn: 'GB',
  ...more,
});
const enter = (more: Partial<Details> = {}, rest: object = {}) =>
  bench.ask('enterComplaint', {
    body: { productId: shop.product, receivedOn: '2026-11-26', details: details(more), ...rest },
  });
const entered = async (more: Partial<Details> = {}, rest: object = {}) => {
  const answer = await enter(more, rest);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
};

describe('a word on a product', () => {
  it('stands open, leads to the batch on the tin, and asks nobody to be told', async () => {
    await makeFirmBase(bench, shop, '300');
    const { run, lot } = await fillTins(bench, shop, 4);
    const view = await entered({}, { runId: run });
    expect(view).toMatchObject({ state: 'open', effect: 'undesirable', lotId: lot, tellings: [] });
    expect(view.batchNumber).toMatch(/^LB-/);
    expect(say(view.sentence)).toBe(
      'An undesirable effect of Lavender butter: it is counted in the product file. Nobody has looked into it yet.',
    );
    expect(await bench.get('listComplaints', { query: { product: shop.product } })).toHaveLength(1);
    expect(await bench.get('listComplaints', { query: { product: shop.smallProduct } })).toEqual([]);
  });

  it('names who has to be told of a serious effect where it happened, and by when', async () => {
    const serious = { effect: 'serious', marks: ['hospitalisation'] } as const;
    const inGb = await entered({ ...serious, marks: [...serious.marks] });
    expect(inGb.tellings.map(({ market, by }) => [market, by])).toEqual([['GB', null]]);
    // Twenty days are read into "without delay" from memory: shown as to be checked.
    const inEu = await entered({ ...serious, marks: [...serious.marks], happenedIn: 'EU' });
    expect(inEu.tellings).toMatchObject([{ market: 'EU', by: '2026-12-16', confidence: 'memory' }]);
    const inUs = await entered({ ...serious, marks: [...serious.marks], happenedIn: 'US' });
    expect(inUs.tellings).toMatchObject([{ market: 'US', by: '2026-12-17', confidence: 'read' }]);
  });

  it('names every market that the product is sold in where nobody knows where it happened', async () => {
    const view = await entered({ effect: 'serious', marks: ['disability'], happenedIn: null });
    expect(view.tellings.map(({ market }) => market)).toEqual(['GB', 'NI']);
  });

  it('counts as something else once somebody has looked into it, and keeps what was said first', async () => {
    const { id } = await entered();
    const params = { id };
    const none = { state: 'looked-into' as const, said: 'The patch was from new gloves.' };
    const view = await bench.get('followComplaint', {
      params,
      body: { ...none, judged: { effect: 'none' } },
    });
    expect(view).toMatchObject({ effect: 'none', state: 'looked-into', details: { effect: 'undesirable' } });
    const closed = await bench.get('followComplaint', {
      params,
      body: { state: 'closed', said: 'Answered.' },
    });
    expect(closed).toMatchObject({ effect: 'none', state: 'closed' });
    expect(closed.words.map(({ said }) => said)).toEqual(['The patch was from new gloves.', 'Answered.']);
  });

  it('does not close a serious one that nobody looked into', async () => {
    const { id } = await entered({ effect: 'serious', marks: ['disability'] });
    const close = { params: { id }, body: { state: 'closed' as const, said: 'Done.' } };
    expect(codesOf(await bench.ask('followComplaint', close))).toEqual(['serious-not-looked-into']);
    await bench.get('followComplaint', {
      params: { id },
      body: { state: 'looked-into', said: 'The Secretary of State was told.' },
    });
    expect(await bench.ask('followComplaint', close)).toMatchObject({ ok: true });
  });

  it('holds no customer’s name, which could never be erased', async () => {
    await bench.get('saveCustomer', { body: { name: 'Wilma Tarn', address: '' } });
    expect(codesOf(await enter({ said: 'wilma tarn says that it itches.' }))).toEqual([
      'complaint-names-customer',
    ]);
  });

  it('refuses a day to come, another product’s batch, and a batch that is not there', async () => {
    await makeFirmBase(bench, shop, '300');
    const { run } = await fillTins(bench, shop, 4);
    expect(codesOf(await enter({}, { receivedOn: '2026-11-27' }))).toEqual(['received-in-future']);
    expect(codesOf(await enter({}, { runId: run, productId: shop.smallProduct }))).toEqual([
      'run-of-another-product',
    ]);
    expect(codesOf(await enter({}, { runId: 'none' }))).toEqual(['thing-not-found']);
  });

  it('is written once however often it is sent', async () => {
    const body = {
      stamp: bench.stamp(),
      productId: shop.product,
      receivedOn: '2026-11-26',
      details: details(),
    };
    await bench.get('enterComplaint', { body });
    await bench.get('enterComplaint', { body });
    expect(await bench.get('listComplaints', { query: {} })).toHaveLength(1);
  });
});
