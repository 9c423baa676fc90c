import { describe, expect, it } from 'vitest';
import { line } from '../../../test/workshop/build-formula.ts';
import { buildProduct, inGrams, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import type { RevisionHead } from '../../storage/index.ts';
import { pickInForce } from './revisions-in-force.ts';

describe('the revision in force', () => {
  const head = (id: string, standing: string, formula = 'f') =>
    ({ id, formula_id: formula, details: JSON.stringify({ standing }) }) as RevisionHead;
  const pick = (...heads: RevisionHead[]) => pickInForce(heads).map(({ id }) => id);

  it('is the newest for sale, whatever trial was written after it', () => {
    expect(pick(head('1', 'for-sale'), head('2', 'for-sale'), head('3', 'trial'))).toEqual(['2']);
  });

  it('is the newest trial where there is nothing else', () => {
    expect(pick(head('1', 'trial'), head('2', 'trial'))).toEqual(['2']);
    expect(pick(head('1', 'trial'), head('2', 'for-sale'), head('3', 'trial', 'g'))).toEqual(['2', '3']);
  });
});

describe('a trial that is being tried out', () => {
  const at = openMakingBench();

  /** The next revision of a formula, as a trial. */
  async function writeTrial(id: string, lines: ReturnType<typeof line>[]): Promise<string> {
    const { latest } = await at.bench.get('getFormula', { params: { id } });
    if (!latest) throw new Error('it has a revision');
    const details = { ...latest.details, standing: 'trial' as const, lines };
    await at.bench.get('saveRevision', { params: { id }, body: { version: latest.version, details } });
    return (await at.bench.get('getFormula', { params: { id } })).latest?.id ?? '';
  }
  const check = (id: string) => at.bench.get('checkRevision', { params: { id }, query: {} });
  const tryBase = () => {
    const { shea, oil } = at.shop.materials;
    return writeTrial(at.shop.base, [
      line(shea, '100', { stage: 'Melt' }),
      line(oil, '900', { stage: 'Cool' }),
    ]);
  };

  it('of a base changes nothing that is sold: not what is judged, nor what may be made of the base in stock', async () => {
    await makeFirmBase(at.bench, at.shop, '400');
    const before = await check(at.shop.mixtureRevision);
    const trial = await tryBase();
    expect(trial).not.toBe(at.shop.baseRevision);
    expect(await check(at.shop.mixtureRevision)).toEqual(before);
    expect((await at.bench.get('getFormula', { params: { id: at.shop.base } })).inForceId).toBe(
      at.shop.baseRevision,
    );
    const wish = inGrams(at.shop.mixtureRevision, '100');
    expect(codesOf(await at.bench.ask('startBatch', { body: { wish } }))).toEqual([]);
  });

  it('of a base is what a trial of the mixture is judged by', async () => {
    await tryBase();
    const { latest } = await at.bench.get('getFormula', { params: { id: at.shop.mixture } });
    const { report } = await check(await writeTrial(at.shop.mixture, latest?.details.lines ?? []));
    expect(report?.rows.find((row) => row.material === 'Shea butter')?.percent).toBe('9.9');
  });

  it('of a mixture without its base leaves the base sold where the mixture is', async () => {
    const { bench, shop } = at;
    await buildProduct(bench, shop.mixture, shop.materials, { name: 'For abroad', markets: ['EU'] });
    const { sold } = await check(shop.baseRevision);
    expect(sold.markets).toEqual(['GB', 'NI', 'EU']);
    await writeTrial(shop.mixture, [line(shop.materials.oil, '100')]);
    expect((await check(shop.baseRevision)).sold).toEqual(sold);
    const view = await bench.get('getFormula', { params: { id: shop.base } });
    expect(view.soldIn).toEqual(['GB', 'NI', 'EU']);
  });
});
