import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type AwayShop, buildAwayShop } from '../workshop/build-away-batch.ts';
import { openTablet, type Tablet } from '../workshop/open-tablet.ts';
import { stampBy } from '../workshop/stamp.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** 1,000 entries in all. */
const ROUNDS = 50;
const ENTRIES = 20;
/** A kill comes at any moment of the sending of a round (milliseconds). */
const LONGEST_MS = 250;
/** Another run kills at other moments; AWAY_SEED repeats one. */
const SEED = Number(process.env.AWAY_SEED ?? Date.now() % 1_000_000);

/** A small generator of numbers below 1 with a known course (Lehmer, 1951: 48271 modulo 2^31 - 1). */
function makeChance(seed: number): () => number {
  let state = (seed % 2_147_483_646) + 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** Runs in the page: into the database of its outbox, on disk when it returns. As text, since the page's types are not here. */
const inOutbox = (work: string): string => `new Promise((done, failed) => {
  const opening = indexedDB.open('gramwright');
  opening.onerror = () => failed(opening.error);
  opening.onsuccess = () => {
    const db = opening.result;
    ${work}
  };
})`;

const queueing = (entries: readonly object[]): string =>
  inOutbox(`
    const tx = db.transaction('outbox', 'readwrite', { durability: 'strict' });
    for (const entry of ${JSON.stringify(entries)}) tx.objectStore('outbox').add(entry);
    tx.onabort = () => failed(tx.error);
    tx.oncomplete = () => {
      db.close();
      new BroadcastChannel('gramwright.outbox').postMessage('changed');
      setTimeout(() => dispatchEvent(new Event('online')));
      done();
    };`);

const COUNTING = inOutbox(`
    const counting = db.transaction('outbox').objectStore('outbox').count();
    counting.onsuccess = () => {
      db.close();
      done(counting.result);
    };`);

describe(`a thousand entries of a tablet while server and browser are killed (AWAY_SEED=${SEED})`, () => {
  const profile = mkdtempSync(join(tmpdir(), 'gramwright-tablet-'));
  const chance = makeChance(SEED);
  let server: RunningServer;
  let shop: AwayShop;
  let batch = '';
  let tablet: Tablet;
  /** What the tablet said is on its disk. */
  const kept: string[] = [];

  beforeAll(async () => {
    server = await startServer();
    shop = await buildAwayShop(server);
    batch = await shop.startBatch();
    tablet = await openTablet(profile);
    await tablet.page.goto(server.address);
    await tablet.page.evaluate(`localStorage.setItem('gramwright.person', '${shop.person}')`);
    await tablet.page.reload();
    await tablet.page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
  });
  afterAll(async () => {
    await tablet?.kill();
    await server?.kill();
    for (const folder of [profile, server.folder]) rmSync(folder, { recursive: true, force: true });
  });

  /** Puts a round's entries where the bench keeps them, then says that the network is back: the page sends them. */
  async function queueRound(round: number): Promise<void> {
    const entries = Array.from({ length: ENTRIES }, (_, number) => entryOf(`${round}.${number}`));
    await tablet.page.evaluate(queueing(entries));
    kept.push(...entries.map(({ body }) => body.what));
  }

  function entryOf(what: string) {
    const stamp = stampBy(shop.person);
    const body = { stamp, screen: null, what, why: 'A round of the test' };
    const held = { state: 'waiting', tab: 'test', until: 0 };
    return { id: stamp.id, route: 'recordDeviation', params: { id: batch }, body, at: stamp.at, ...held };
  }

  async function restartServer(): Promise<void> {
    await server.kill();
    server = await startServer({ folder: server.folder, port: Number(new URL(server.address).port) });
  }

  /** Whether the workshop answers at this moment or not: the page comes up, and with it what lies here. */
  async function restartTablet(): Promise<void> {
    await tablet.kill();
    tablet = await openTablet(profile);
    await tablet.page.goto(server.address);
  }

  async function runRound(round: number): Promise<void> {
    await queueRound(round);
    await new Promise((soon) => setTimeout(soon, Math.floor(chance() * LONGEST_MS)));
    const killed = chance();
    await Promise.all([
      killed < 2 / 3 ? restartServer() : undefined,
      killed > 1 / 3 ? restartTablet() : undefined,
    ]);
  }

  const countWaiting = (): Promise<number> => tablet.page.evaluate<number>(COUNTING);

  it('loses none and doubles none', { timeout: 900_000 }, async () => {
    for (let round = 0; round < ROUNDS; round += 1) await runRound(round);
    await expect.poll(countWaiting, { timeout: 120_000, interval: 500 }).toBe(0);
    const { deviations, claims } = await server.call('getBatch', { params: { id: batch } });
    expect(claims).toEqual([]);
    expect(kept).toHaveLength(ROUNDS * ENTRIES);
    // All of them, each once, in the order in which they were made.
    expect(deviations.map(({ what }) => what)).toEqual(kept);
    const report = await server.call('checkUp');
    expect(report.findings.filter(({ isSound }) => !isSound)).toEqual([]);
  });
});
