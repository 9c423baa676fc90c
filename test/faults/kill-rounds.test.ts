import { rmSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RouteName } from '../../src/contract/index.ts';
import { buildOwnWorkshop, type OwnWorkshop } from '../workshop/own-workshop.ts';
import { inDays, stampBy } from '../workshop/stamp.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';
import { listBenchWrites, weighAll } from '../workshop/weigh-all.ts';

/** Half of the rounds kill during making, half during reservation and dispatch. */
const ROUNDS = 20;
const TINS = 14;
/** After so many milliseconds in a write: before it is read, inside it, about when it is answered, after. */
const MOMENTS = [0, 1, 2, 3, 4, 6, 8, 11, 15, 25];

interface Write {
  readonly name: RouteName;
  readonly params: Record<string, string>;
  readonly body: { readonly stamp: { readonly id: string } } & Record<string, unknown>;
}

describe('kill -9 during making and dispatch', () => {
  let server: RunningServer;
  let shop: OwnWorkshop;
  let tinsLot = '';
  const acknowledged: string[] = [];
  const stamp = () => stampBy(shop.person);

  beforeAll(async () => {
    server = await startServer();
    shop = await buildOwnWorkshop(server);
    await stockUp();
    await makeBase();
    tinsLot = await fillTins();
  });
  afterAll(async () => {
    await server.kill();
    rmSync(server.folder, { recursive: true, force: true });
  });

  const post = (name: RouteName, body: object, params: Record<string, string> = {}) =>
    server.call(name, { params, body: { stamp: stamp(), ...body } });

  async function stockUp(): Promise<void> {
    const amounts = {
      shea: '2000',
      sunflower: '2000',
      starch: '500',
      orange: '200',
      tin: '60',
      lid: '60',
      label: '60',
    };
    for (const [key, quantity] of Object.entries(amounts)) {
      const materialId = shop.materials[key as keyof typeof amounts];
      const lot = {
        materialId,
        supplierLot: `S-${key}`,
        bestBefore: inDays(300),
        quantity,
        paid: '10',
        accept: true,
      };
      await post('receiveGoods', lot);
    }
  }

  async function makeBase(): Promise<void> {
    const formula = await server.call('getFormula', { params: { id: shop.base } });
    const wish = {
      revisionId: formula.latest?.id,
      purpose: 'sale',
      markets: ['GB'],
      size: { by: 'grams', grams: '2400' },
    };
    const batch = await server.call('startBatch', { body: { stamp: stamp(), wish } });
    await weighAll(server, batch.id, stamp);
    const params = { id: batch.id };
    const made = await server.call('finishBatch', { params, body: { stamp: stamp(), yieldGrams: '2390' } });
    await post('sayFirm', { remark: 'Firm.' }, { id: made.lotId ?? '' });
    const check = await server.call('checkRevision', {
      params: { id: shop.mixtureRevision },
      query: { markets: 'GB,NI' },
    });
    for (const { key, decided } of check.open) {
      if (decided !== null) continue;
      await post(
        'decideUnknown',
        { key, verdict: 'accepted', reason: 'Read with the assessor.' },
        { id: shop.mixtureRevision },
      );
    }
  }

  const wish = (grams: string) => ({
    revisionId: shop.mixtureRevision,
    purpose: 'sale',
    markets: ['GB', 'NI'],
    size: { by: 'grams', grams },
  });

  /** One released filling run with more tins than the rounds will send. */
  async function fillTins(): Promise<string> {
    const batch = await server.call('startBatch', { body: { stamp: stamp(), wish: wish('560') } });
    await weighAll(server, batch.id, stamp);
    await post('finishBatch', { yieldGrams: '558' }, { id: batch.id });
    const run = await server.call('startRun', {
      body: {
        stamp: stamp(),
        batchId: batch.id,
        productId: shop.product,
        wanted: TINS,
        scaleId: shop.scales.small,
        tareGrams: '11.4',
      },
    });
    const params = { id: run.id };
    await post('prepareRun', { word: { kind: 'area', isClear: true } }, params);
    for (let tin = 0; tin < TINS; tin += 1)
      await post('recordFill', { grossGrams: `46.6${tin % 2}`, tareGrams: null }, params);
    const closed = await server.call('closeRun', {
      params,
      body: { stamp: stamp(), retained: { keep: true, grams: '10' }, leftGrams: '40' },
    });
    await post('releaseRun', { verdict: 'released', reason: '' }, params);
    return closed.lotId ?? '';
  }

  /** Sends a write and remembers that it was acknowledged. */
  async function carryOut({ name, params, body }: Write): Promise<{ id: string }> {
    const answer = (await server.call(name, { params, body })) as { id: string };
    acknowledged.push(body.stamp.id);
    return answer;
  }

  /** Kills the server so long after the write was sent, starts it anew on the same file, and sends the write once more. */
  async function killDuring(write: Write, moment: number): Promise<{ id: string }> {
    const answered = server.send(write.name, write).then(
      (response) => response.ok,
      () => false,
    );
    await new Promise((waited) => setTimeout(waited, moment));
    await server.kill();
    if (await answered) acknowledged.push(write.body.stamp.id);
    server = await startServer({ folder: server.folder });
    await expectNothingLost();
    return carryOut(write);
  }

  async function expectNothingLost(): Promise<void> {
    const response = await server.send('exportJson');
    const { tables } = (await response.json()) as { tables: { entry: { id: string; seq: number }[] } };
    const ids = new Set(tables.entry.map((entry) => entry.id));
    expect(acknowledged.filter((id) => !ids.has(id))).toEqual([]);
    expect(ids.size).toBe(tables.entry.length);
    const report = await server.call('checkUp');
    expect(report.findings.filter((finding) => !finding.isSound)).toEqual([]);
  }

  const writeOf = (name: RouteName, body: object, params: Record<string, string> = {}): Write => ({
    name,
    params,
    body: { ...body, stamp: stamp() },
  });

  /** A batch from its start to its yield; the write of that number is the one killed. */
  async function makeWithKill(killed: number, moment: number): Promise<void> {
    let number = 0;
    const send = (write: Write) => {
      number += 1;
      return number === killed ? killDuring(write, moment) : carryOut(write);
    };
    const { id } = await send(writeOf('startBatch', { wish: wish('50') }));
    for (const { name, body } of await listBenchWrites(server, id)) await send(writeOf(name, body, { id }));
    await send(writeOf('finishBatch', { yieldGrams: '49.5' }, { id }));
    expect(number).toBe(5);
    const batch = await server.call('getBatch', { params: { id } });
    expect(batch).toMatchObject({ state: 'made', outcome: { inputGrams: '50', yieldGrams: '49.5' } });
  }

  async function sendWithKill(isReservationKilled: boolean, moment: number): Promise<void> {
    const order = { customerId: shop.customer, placedOn: inDays(0), wantedBy: inDays(3), note: '' };
    const lines = [{ productId: shop.product, units: 1 }];
    const { id } = await carryOut(writeOf('saveOrder', { ...order, lines }));
    const reserve = writeOf('reserveOrder', {}, { id });
    await (isReservationKilled ? killDuring(reserve, moment) : carryOut(reserve));
    const dispatch = writeOf('dispatchOrder', { tracking: '' }, { id });
    await (isReservationKilled ? carryOut(dispatch) : killDuring(dispatch, moment));
    const sent = await server.call('getOrder', { params: { id } });
    expect(sent.state).toBe('sent');
    expect(sent.lines[0]?.sent).toEqual([{ lotId: tinsLot, lotNumber: expect.any(String), units: 1 }]);
    expect(sent.lines[0]?.reserved).toEqual([]);
  }

  const rounds = Array.from({ length: ROUNDS }, (_, round) => round);

  it.each(rounds)(
    'round %i loses nothing that was acknowledged, and counts the entry once that was sent again',
    async (round) => {
      const pair = Math.floor(round / 2);
      const moment = MOMENTS[pair % MOMENTS.length] ?? 0;
      if (round % 2 === 0) await makeWithKill((pair % 5) + 1, moment);
      else await sendWithKill(pair % 2 === 1, moment);
    },
  );

  it('afterwards every gram and every tin is accounted for', async () => {
    const [oil] = await server.call('findLots', { query: { like: 'Sweet orange' } });
    const traced = await server.call('traceLot', { params: { id: oil?.id ?? '' } });
    expect(traced.balance).toMatchObject({ verdict: 'within', unexplainedGrams: '0' });
    const tins = await server.call('traceLot', { params: { id: tinsLot } });
    expect([tins.unitsSent, tins.unitsOnHand]).toEqual([ROUNDS / 2, TINS - ROUNDS / 2]);
    expect(tins.orders).toHaveLength(ROUNDS / 2);
    const batches = await server.call('listBatches');
    expect(batches.filter((batch) => batch.state === 'made')).toHaveLength(ROUNDS / 2 + 2);
  });
});
