import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();

type Market = 'GB' | 'NI' | 'EU';
async function sellIn(markets: Market[]) {
  const product = (await at.bench.get('listProducts')).find((row) => row.id === at.shop.product);
  if (!product) throw new Error('the bench sells it');
  const { id, version, details } = product;
  return at.bench.ask('saveProduct', { body: { id, version, details: { ...details, markets } } });
}
async function closedRun() {
  const run = await at.startRun((await at.makeBowl()).id);
  await at.fillAll(run.id, ...FIVE);
  return at.closeRun(run.id);
}
const look = (id: string) => at.bench.get('getRun', { params: { id } });

describe('a market that a product gets', () => {
  it('while its tins are on the bench is looked at by their release too', async () => {
    const run = await closedRun();
    expect(codesOf(await sellIn(['GB', 'NI', 'EU']))).toEqual([]);
    const { checks, markets } = await look(run.id);
    expect(markets).toEqual(['GB', 'NI', 'EU']);
    expect(checks.find(({ check }) => check === 'markets')).toMatchObject({
      isToSee: true,
      detail: { parameters: { markets: 'EU' } },
    });
    expect(checks.map(({ check }) => check)).toContain('label-EU');
    // The report of the bench is for Great Britain and Northern Ireland.
    expect(checks.find(({ check }) => check === 'limits')?.isPassed).toBe(false);
    expect(codesOf(await at.release(run.id))).toContain('release-check-failed');
  });

  it('is refused while released tins stand that were not checked for it, and not once they are blocked', async () => {
    const run = await closedRun();
    expect(codesOf(await at.release(run.id))).toEqual([]);
    const refused = await sellIn(['GB', 'NI', 'EU']);
    expect(codesOf(refused)).toEqual(['tins-not-cleared']);
    expect(refused).toMatchObject({
      problems: [{ where: 'details.markets', parameters: { runs: 'LB-0001', markets: 'EU' } }],
    });
    expect(codesOf(await sellIn(['GB']))).toEqual([]);
    expect(codesOf(await sellIn(['GB', 'NI']))).toEqual([]);
    const body = { status: 'blocked' as const, reason: 'For the test' };
    await at.bench.get('setLotStatus', { params: { id: run.lotId ?? '' }, body });
    expect(codesOf(await sellIn(['GB', 'NI', 'EU']))).toEqual([]);
    expect((await look(run.id)).markets).toEqual(['GB', 'NI']);
    const back = { status: 'released' as const, reason: 'Looked at again' };
    const again = await at.bench.ask('setLotStatus', { params: { id: run.lotId ?? '' }, body: back });
    expect(again).toMatchObject({
      problems: [{ code: 'release-check-failed', where: 'markets' }],
    });
  });
});
