import { expect } from 'vitest';
import { TINS, type WholeShop } from './build-whole-shop.ts';
import type { RunningServer } from './start-server.ts';

interface Made {
  readonly batch: string;
  readonly run: string;
  /** The first one was poured over by so many grams, and the rest was made larger. */
  readonly isResized: boolean;
}

/** Added in millionths of a gram, so that nothing is lost in adding. */
const toMicrograms = (grams: string): number => Math.round(Number(grams) * 1e6);

/** Whatever was done at the bench stands at the workshop once, whole, and adds up to the last microgram. */
export async function expectWholeBatch(server: RunningServer, shop: WholeShop, made: Made): Promise<void> {
  await expectWeighed(server, shop, made);
  await expectSteps(server, made);
  await expectFilled(server, shop, made);
  const { isSound, findings } = await server.call('checkUp');
  expect(findings.filter((finding) => !finding.isSound)).toEqual([]);
  expect(findings.some(({ what }) => /^The chain of [\d\s]+ entries is unbroken$/.test(what))).toBe(true);
  expect(isSound).toBe(true);
}

async function expectWeighed(server: RunningServer, shop: WholeShop, made: Made): Promise<void> {
  const { screens, resizes, claims } = await server.call('getBatch', { params: { id: made.batch } });
  expect(claims).toEqual([]);
  expect(resizes).toHaveLength(made.isResized ? 1 : 0);
  expect(screens.map(({ done }) => done !== null)).toEqual(screens.map(() => true));
  const additions = screens.flatMap((each) => (each.kind === 'addition' ? [each] : []));
  const { lots } = shop;
  expect(additions.map(({ entries }) => entries.map(({ lotId }) => lotId))).toEqual([
    [lots.shea],
    [lots.first, lots.second],
    [lots.starch],
    [lots.orange],
  ]);
  for (const each of additions) {
    const parts = each.entries.map(({ actualGrams }) => toMicrograms(actualGrams));
    const asked = made.isResized && each.position === 0 ? each.inGrams : each.targetGrams;
    expect(sumOf(parts), each.itemName).toBe(toMicrograms(asked));
  }
  const times = additions.flatMap(({ entries }) => entries.map(({ at }) => at));
  expect([...times].sort()).toEqual(times);
  await expectOnHand(server, shop, new Map(additions.map(({ entries, itemId }) => [itemId, entries])));
}

const sumOf = (parts: readonly number[]): number => parts.reduce((sum, part) => sum + part, 0);

type Entries = readonly { readonly lotId: string; readonly actualGrams: string }[];

/** The ledger: what came in less what went in; the lot that ran out was booked empty. */
async function expectOnHand(server: RunningServer, { lots }: WholeShop, entriesOf: Map<string, Entries>) {
  const entries = [...entriesOf.values()].flat();
  for (const [name, id] of Object.entries(lots)) {
    const { lot } = await server.call('getLot', { params: { id } });
    const out = entries.flatMap(({ lotId, actualGrams }) =>
      lotId === id ? [toMicrograms(actualGrams)] : [],
    );
    expect(out.length, name).toBeGreaterThan(0);
    const left = name === 'first' ? 0 : toMicrograms(lot.cameIn) - sumOf(out);
    expect(toMicrograms(lot.onHand), name).toBe(left);
  }
}

async function expectSteps(server: RunningServer, { batch }: Made): Promise<void> {
  const { screens } = await server.call('getBatch', { params: { id: batch } });
  const steps = screens.flatMap((each) => (each.kind === 'step' ? [each] : []));
  expect(steps.map(({ stepKind, begun, done }) => [stepKind, begun.length, done?.celsius])).toEqual([
    ['melt', 2, '72'],
    ['hold', 1, '71'],
    ['cool', 1, '38'],
    ['set', 1, null],
    ['whip', 1, null],
    ['cup', 0, null],
  ]);
  for (const { done } of steps.slice(0, 2)) expect(Number(done?.minutes)).toBeGreaterThanOrEqual(0.1);
  expect(steps[4]?.whipped).toMatchObject([{ looked: 'firm-peaks', goes: 'stop' }]);
  expect(steps[5]?.done?.weighed).toMatchObject({ grossGrams: '51.4', tareGrams: '11.4', cupMl: '66' });
}

async function expectFilled(server: RunningServer, shop: WholeShop, made: Made): Promise<void> {
  const run = await server.call('getRun', { params: { id: made.run } });
  expect(run.claims).toEqual([]);
  const { area, containers, issued } = run.ready;
  expect([area?.isClear, containers?.method, issued?.tins]).toEqual([true, 'washed-dried', TINS]);
  expect(run.weights.map(({ number, grossGrams, isRefilled }) => [number, grossGrams, isRefilled])).toEqual([
    [1, '46.55', false],
    [2, '46.6', false],
    [3, '46.21', true],
    [3, '46.57', false],
    [4, '46.52', false],
  ]);
  expect(run.release).toMatchObject({ verdict: 'released', by: 'Ada Quill' });
  expect(run.closing).toMatchObject({ units: TINS, retainedGrams: '10', leftGrams: '0' });
  for (const id of Object.values(shop.parts)) {
    const { lot } = await server.call('getLot', { params: { id } });
    expect(Number(lot.cameIn) - Number(lot.onHand)).toBe(TINS);
  }
  // The bowl: what came out is in the tins, in the sample, or stayed behind; nothing of it is left on the book.
  const { outcome, lotId } = await server.call('getBatch', { params: { id: made.batch } });
  const bowl = await server.call('getLot', { params: { id: lotId ?? '' } });
  expect(bowl.lot.onHand).toBe('0');
  const tins = run.weights.flatMap(({ netGrams, isRefilled }) =>
    isRefilled ? [] : [toMicrograms(netGrams)],
  );
  const gone = sumOf(tins) + toMicrograms('10') + toMicrograms(run.closing?.lostGrams ?? '');
  expect(gone).toBe(toMicrograms(outcome?.yieldGrams ?? ''));
  const trace = await server.call('traceLot', { params: { id: run.lotId ?? '' } });
  expect(trace.unitsOnHand).toBe(TINS);
}
