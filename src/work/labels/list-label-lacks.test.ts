import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { countEntries } from '../../../test/workshop/small-file.ts';

const at = openFillingBench();

describe('what a label would lack', () => {
  const detailsOf = async (more: object = {}) => {
    const product = (await at.bench.get('listProducts')).find(({ id }) => id === at.shop.product);
    if (!product) throw new Error('no such product');
    return { ...product.details, ...more };
  };
  const lacks = async (more: object = {}, batchId: string | null = null) =>
    at.bench.get('listLabelLacks', {
      body: { details: await detailsOf(more), productId: at.shop.product, batchId },
    });

  it('is nothing where everything is written down, before and after a batch is made', async () => {
    expect(await lacks()).toEqual([]);
    expect(await lacks({}, (await at.makeBowl()).id)).toEqual([]);
  });

  it('is said before anything is filled, once for all the markets that lack it', async () => {
    const { markets } = await detailsOf();
    expect(await lacks({ functionText: '' })).toEqual([
      { element: 'function', says: { code: 'label-function-missing', parameters: {} }, markets },
    ]);
    expect((await lacks({ functionText: ' ' }, (await at.makeBowl()).id)).map((row) => row.element)).toEqual([
      'function',
    ]);
  });

  it('is what its market lacks, and no other', async () => {
    const { details, version } = await at.bench.get('getWorkshop');
    if (!details) throw new Error('the workshop has not begun');
    const responsibleEu = { name: '', address: '' };
    await at.bench.get('changeWorkshop', { body: { version, details: { ...details, responsibleEu } } });
    expect(await lacks({ markets: ['GB'] })).toEqual([]);
    expect(await lacks({ markets: ['GB', 'NI'] })).toMatchObject([
      { element: 'responsible-person', says: { code: 'label-responsible-missing' }, markets: ['NI'] },
    ]);
  });

  it('is what the run lacked, had it been begun', async () => {
    const batch = await at.makeBowl();
    const product = (await at.bench.get('listProducts')).find(({ id }) => id === at.shop.product);
    if (!product) throw new Error('no such product');
    const details = { ...product.details, functionText: '' };
    await at.bench.get('saveProduct', { body: { id: product.id, version: product.version, details } });
    const run = await at.startRun(batch.id);
    const query = { market: 'GB' as const };
    const { missing } = await at.bench.get('getRunLabel', { params: { id: run.id }, query });
    expect((await lacks({ functionText: '', markets: ['GB'] }, batch.id)).map(({ says }) => says)).toEqual(
      missing,
    );
  });

  it('writes nothing, and refuses a batch that is not there', async () => {
    const before = countEntries(at.bench.context.storage);
    await lacks({ functionText: '' });
    expect(countEntries(at.bench.context.storage)).toBe(before);
    const body = { details: await detailsOf(), productId: at.shop.product, batchId: 'none' };
    expect(codesOf(await at.bench.ask('listLabelLacks', { body }))).toEqual(['thing-not-found']);
  });
});
