import { describe, expect, it } from 'vitest';
import { inGrams, makeBatch, makeFirmBase, reviseBase } from '../../../test/workshop/build-making.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { expandFormula } from '../../core/formula/index.ts';
import { must } from '../../core/problem.ts';
import { findMadeLookup } from './made-lookup.ts';

const at = openMakingBench();

describe('what a batch was made of', () => {
  const lookup = (batchId: string) => findMadeLookup(at.bench.context.storage.db, batchId);
  const makeTrial = (grams: string) =>
    makeBatch(at.bench, inGrams(at.shop.mixtureRevision, grams, { purpose: 'trial' }));

  it('is what its formula says while its base is the one in force', async () => {
    await makeFirmBase(at.bench, at.shop, '400');
    const { id } = await makeBatch(at.bench, inGrams(at.shop.mixtureRevision, '100'));
    expect(await lookup(id)).toBeUndefined();
  });

  it('stays what it was once its base is written anew', async () => {
    await makeFirmBase(at.bench, at.shop, '400');
    const { id } = await makeTrial('100');
    await reviseBase(at.bench, at.shop, ['300', '700']);
    // 99 % base of 65 : 35, and 1 % lavender oil.
    expect(await percents(id)).toEqual({ shea: '64.35', oil: '34.65', scent: '1' });
  });

  it('is of a base of two batches as much of each as was weighed in', async () => {
    await makeFirmBase(at.bench, at.shop, '400');
    await reviseBase(at.bench, at.shop, ['300', '700']);
    const { latest } = await at.bench.get('getFormula', { params: { id: at.shop.base } });
    await makeFirmBase(at.bench, { ...at.shop, baseRevision: latest?.id ?? '' }, '400');
    const { id } = await makeTrial('500');
    // 399 g of 65 : 35 and 96 g of 30 : 70 are 288.15 g of shea butter and 206.85 g of oil in 495 g, which are 99 %.
    expect(await percents(id)).toEqual({ shea: '57.63', oil: '41.37', scent: '1' });
  });

  async function percents(batchId: string) {
    const made = await lookup(batchId);
    if (!made) throw new Error('it is made of what its formula says');
    const { shea, oil, scent } = at.shop.materials;
    const { materials } = must(expandFormula(batchId, made));
    const of = (id: string) => materials.find((row) => row.materialId === id)?.percent.toString();
    return { shea: of(shea), oil: of(oil), scent: of(scent) };
  }
});
