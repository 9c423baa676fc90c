import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildTins, fillTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;
let base: string;

/** Everything is made on the 26th of November 2026; the scent is the first to end, on 30 June 2027. */
beforeEach(async () => {
  bench = await openTestWorkshop();
  await nameWorkshop(bench);
  shop = await buildMakingBench(bench);
  base = await makeFirmBase(bench, shop, '800');
});
afterEach(() => bench.close());

const lotOf = async (id: string) => (await bench.get('getLot', { params: { id } })).lot;
async function correct(id: string, bestBefore: string): Promise<void> {
  const { version, supplierLot, paid } = await lotOf(id);
  const body = { version, supplierLot, paid, bestBefore, reason: 'Misread' };
  await bench.get('correctLot', { params: { id }, body });
}
const release = (id: string) =>
  bench.ask('releaseRun', { params: { id }, body: { verdict: 'released', reason: '' } });
const lotsCheck = async (id: string) =>
  (await bench.get('getRun', { params: { id } })).checks.find((each) => each.check === 'lots');

describe('a lot whose date turns out to be sooner', () => {
  it('shortens what was made of it: base and tins that nobody has decided yet', async () => {
    const { run, lot } = await fillTins(bench, shop, 5);
    expect((await lotOf(lot)).bestBefore).toBe('2027-06-30');
    await correct(shop.lots.shea, '2027-03-31');
    expect((await lotOf(base)).bestBefore).toBe('2027-03-31');
    expect((await lotOf(lot)).bestBefore).toBe('2027-03-31');
    expect(codesOf(await release(run))).toEqual([]);
    const { findings } = await bench.get('checkUp');
    expect(findings.filter((finding) => !finding.isSound)).toEqual([]);
  });

  it('stops the release where it had ended before it was used', async () => {
    const { run } = await fillTins(bench, shop, 5);
    await correct(shop.lots.scent, '2026-11-25');
    expect(await lotsCheck(run)).toMatchObject({
      isPassed: false,
      detail: { code: 'check-lot-past-when-used', parameters: { day: '2026-11-26' } },
    });
    expect(codesOf(await release(run))).toContain('release-check-failed');
  });

  it('stops nothing where it ended on the day on which it was used', async () => {
    const { run } = await fillTins(bench, shop, 5);
    await correct(shop.lots.scent, '2026-11-26');
    expect(await lotsCheck(run)).toMatchObject({ isPassed: true });
  });

  it('leaves the date that is printed on released tins, and stops their next release', async () => {
    const lot = await buildTins(bench, shop, 5);
    await correct(shop.lots.scent, '2027-03-31');
    expect((await lotOf(lot)).bestBefore).toBe('2027-06-30');
    const set = (status: 'blocked' | 'released') =>
      bench.ask('setLotStatus', { params: { id: lot }, body: { status, reason: 'Looked at' } });
    await set('blocked');
    expect(codesOf(await set('released'))).toEqual(['release-check-failed']);
  });

  it('makes nothing last longer where its date turns out to be later', async () => {
    const { lot } = await fillTins(bench, shop, 5);
    await correct(shop.lots.scent, '2028-06-30');
    expect((await lotOf(lot)).bestBefore).toBe('2027-06-30');
  });
});
