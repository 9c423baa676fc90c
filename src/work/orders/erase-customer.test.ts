import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

const folder = mkdtempSync(join(tmpdir(), 'gramwright-erase-'));
const file = join(folder, 'w.gramwright');
/** Invented, and found nowhere else in a workshop's file. */
const WORDS = ['Quenella', 'Oldname', 'Vexholm', 'doorbell', 'TRK-77131', 'moved to Lunds'];
const OTHERS = ['Brackwater', 'TRK-88242', 'Back gate', 'TRK-99353'];
/** Typed for the first customer into orders that are another's by now. */
const MOVED = ['Ring twice for Quenella', 'TRK-55464'];

let bench: TestWorkshop;
let shop: MakingBench;
const stampOfCustomer = { id: 'stamp-of-customer', at: '', by: '', device: 'test bench' };
let customerId = '';
let sentId = '';
let openId = '';

const placeOrder = (customer: string, note: string) =>
  bench.get('saveOrder', {
    body: {
      customerId: customer,
      placedOn: '2026-11-20',
      wantedBy: '2026-11-27',
      note,
      lines: [{ productId: shop.product, units: 1 }],
    },
  });
const send = (id: string, tracking: string) =>
  bench.get('dispatchOrder', { params: { id }, body: { tracking } });

beforeAll(async () => {
  bench = await openTestWorkshop({ file });
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
  await makeFirmBase(bench, shop, '300');
  await buildTins(bench, shop, 6);
  Object.assign(stampOfCustomer, { at: bench.now(), by: bench.people.first });
  const first = { stamp: stampOfCustomer, name: 'Oldname', address: '4 Vexholm Way' };
  customerId = (await bench.get('saveCustomer', { body: first })).id;
  await bench.get('saveCustomer', {
    body: { id: customerId, version: 1, name: 'Quenella', address: '4 Vexholm Way' },
  });
  sentId = (await placeOrder(customerId, 'Use the doorbell')).id;
  await send(sentId, 'TRK-77131');
  const cancelled = await placeOrder(customerId, '');
  await bench.get('cancelOrder', {
    params: { id: cancelled.id },
    body: { version: 1, reason: 'moved to Lunds' },
  });
  openId = (await placeOrder(customerId, '')).id;
  const other = (await bench.get('saveCustomer', { body: { name: 'Brackwater', address: '' } })).id;
  await send((await placeOrder(other, '')).id, 'TRK-88242');
  await moveOrders(other);
}, 60_000);

const moveTo = async (id: string, customer: string | null, note: string) => {
  const { version, lines } = await bench.get('getOrder', { params: { id } });
  const dates = { placedOn: '2026-11-20', wantedBy: '2026-11-27' };
  const units = lines.map((line) => ({ productId: line.productId, units: line.units }));
  await bench.get('saveOrder', { body: { id, version, customerId: customer, ...dates, note, lines: units } });
};

/** One keeps its note and was sent before; of one the note was typed anew; one is nobody's by now. */
async function moveOrders(other: string): Promise<void> {
  const kept = (await placeOrder(customerId, 'Ring twice for Quenella')).id;
  await send(kept, 'TRK-55464');
  await moveTo(kept, other, 'Ring twice for Quenella');
  const anew = (await placeOrder(customerId, 'Ring twice for Quenella')).id;
  await moveTo(anew, other, 'Back gate');
  await send(anew, 'TRK-99353');
  const nobodys = (await placeOrder(customerId, 'Ring twice for Quenella')).id;
  await moveTo(nobodys, null, 'Ring twice for Quenella');
}
afterAll(async () => {
  await bench.close();
  rmSync(folder, { recursive: true });
});

const bytesOf = (path: string): Buffer => (existsSync(path) ? readFileSync(path) : Buffer.alloc(0));
const found = (words: readonly string[]): string[] => {
  const bytes = Buffer.concat([bytesOf(file), bytesOf(`${file}-wal`)]);
  return words.filter((word) => bytes.includes(word));
};

describe('what was typed for a customer', () => {
  it('stands in the file, and never in the chain', () => {
    expect(found([...WORDS, ...MOVED])).toEqual([...WORDS, ...MOVED]);
    const entries = bench.context.storage.handle.prepare('select * from entry').all();
    const chain = JSON.stringify(entries);
    expect(
      [...WORDS, ...MOVED, ...OTHERS, 'Ada Quill', 'Bo Marsh'].filter((word) => chain.includes(word)),
    ).toEqual([]);
  });

  it('is erased from the file and from the log beside it, down to the bytes', async () => {
    await bench.get('eraseCustomer', { params: { id: customerId }, body: {} });
    expect(found([...WORDS, ...MOVED])).toEqual([]);
    expect(found(OTHERS), 'another customer’s stays').toEqual(OTHERS);
  });

  it('leaves the order, its number and a sound file', async () => {
    expect(await bench.get('getOrder', { params: { id: sentId } })).toMatchObject({
      customerName: '',
      note: '',
      state: 'sent',
    });
    const { findings } = await bench.get('checkUp');
    expect(findings.filter((finding) => !finding.isSound)).toEqual([]);
  });

  it('cannot be guessed by the hash of the entry: the salt is gone with it', async () => {
    const guess = { stamp: stampOfCustomer, name: 'Oldname', address: '4 Vexholm Way' };
    expect(codesOf(await bench.ask('saveCustomer', { body: guess }))).toEqual(['stamp-used-otherwise']);
    const salts = bench.context.storage.handle.prepare('select count(*) as n from request_salt').get();
    expect(salts, 'those of the other customer: added, ordered, sent, and sent what was moved').toEqual({
      n: 4,
    });
  });

  it('is not begun again: no tracking number is taken for what went or goes to them', async () => {
    const body = { tracking: 'TRK-99001' };
    const [parcel] = (await bench.get('getOrder', { params: { id: sentId } })).parcels;
    const params = { id: parcel?.id ?? '' };
    expect(codesOf(await bench.ask('saveTracking', { params, body }))).toEqual(['tracking-of-erased']);
    expect(codesOf(await bench.ask('saveTracking', { params, body: { tracking: '' } }))).toEqual([]);
    expect(codesOf(await bench.ask('dispatchOrder', { params: { id: openId }, body }))).toEqual([
      'tracking-of-erased',
    ]);
    expect(found(['TRK-99001'])).toEqual([]);
  });
});
