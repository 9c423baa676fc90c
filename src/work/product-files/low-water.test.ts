import { afterEach, beforeEach, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench } from '../../../test/workshop/build-making.ts';
import { writtenFile } from '../../../test/workshop/build-product-file.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { say } from '../../words/index.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
});
afterEach(() => bench.close());

const saidOf = async (waterInUse: '' | 'no' | 'yes') => {
  const params = { id: shop.product };
  const { version } = await bench.get('getProductFile', { params });
  await bench.get('saveProductFile', { params, body: { version, details: writtenFile([], { waterInUse }) } });
  const { chapters } = await bench.get('getProductFile', { params });
  const says = chapters.find(({ key }) => key === 'microbiology')?.says ?? [];
  return says.map((words) => (typeof words === 'string' ? words : say(words))).join(' ');
};

it('hangs on whether water comes in while it is used, and is never low-risk while nobody has said', async () => {
  expect(await saidOf('')).toContain('is not known: nobody has said');
  expect(await saidOf('no')).toContain('Low-risk for microbes as it is filled');
  expect(await saidOf('yes')).toContain('is not known: it holds no water as it is filled');
});
