import { describe, expect, it } from 'vitest';
import { inTins } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();

async function nameProducts(productIds: string[]): Promise<void> {
  const [report] = await at.bench.get('listReports');
  if (!report) throw new Error('the bench has a report');
  const { id, version, details } = report;
  await at.bench.get('saveReport', { body: { id, version, details: { ...details, productIds } } });
}
async function closedRun() {
  const run = await at.startRun((await at.makeBowl()).id);
  await at.fillAll(run.id, ...FIVE);
  return at.closeRun(run.id);
}
const limitsOf = async (id: string) =>
  (await at.bench.get('getRun', { params: { id } })).checks.find(({ check }) => check === 'limits');
const plan = async (...products: string[]) => {
  const tins = products.map((productId) => ({ productId, units: 2 }));
  const body = inTins(at.shop.mixtureRevision, tins);
  return (await at.bench.get('planBatch', { body })).hindrances.map(({ code }) => code);
};

describe('a report that names products', () => {
  it('covers the one that it names, and no other: its tins are not released', async () => {
    const run = await closedRun();
    await nameProducts([at.shop.product]);
    expect(await limitsOf(run.id)).toMatchObject({ isPassed: true });
    await nameProducts([at.shop.smallProduct]);
    expect(await limitsOf(run.id)).toMatchObject({
      isPassed: false,
      detail: {
        code: 'sale-report-of-others',
        parameters: { report: 'R-1', products: 'Lavender butter' },
      },
    });
    expect(codesOf(await at.release(run.id))).toContain('release-check-failed');
  });

  it('stops a plan for tins of another, alone or beside the one that it names', async () => {
    await nameProducts([at.shop.smallProduct]);
    expect(await plan(at.shop.smallProduct)).toEqual([]);
    expect(await plan(at.shop.product)).toEqual(['sale-report-of-others']);
    expect(await plan(at.shop.smallProduct, at.shop.product)).toEqual(['sale-report-leaves-product']);
  });

  it('leaves the formula allowed, and says which of its products it does not cover', async () => {
    await nameProducts([at.shop.smallProduct]);
    const check = await at.bench.get('checkRevision', { params: { id: at.shop.mixtureRevision }, query: {} });
    expect(check.answer).toBe('yes');
    expect(check.reasons).toContainEqual(
      expect.objectContaining({
        code: 'sale-report-leaves-product',
        parameters: expect.objectContaining({ product: 'Lavender butter', report: 'R-1' }),
      }),
    );
  });

  it('covers them all where it names none', async () => {
    await nameProducts([]);
    expect(await plan(at.shop.smallProduct, at.shop.product)).toEqual([]);
  });
});
