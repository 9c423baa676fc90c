import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { fillTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import type { productFiles } from '../../contract/index.ts';
import { say } from '../../words/index.ts';

let bench: TestWorkshop;
let shop: MakingBench;
beforeEach(async () => {
  bench = await openTestWorkshop();
  await nameWorkshop(bench);
  shop = await buildMakingBench(bench);
});
afterEach(() => bench.close());

const wordsOf = (words: productFiles.Words): string => (typeof words === 'string' ? words : say(words));
async function chapterOf(key: string) {
  const { chapters } = await bench.get('getProductFile', { params: { id: shop.product } });
  return chapters.find((one) => one.key === key);
}
async function certificateRows(): Promise<string[][]> {
  const chapter = await chapterOf('impurities');
  const table = chapter?.tables.find(({ caption }) =>
    wordsOf(caption).startsWith('Certificates of the lots'),
  );
  return (table?.rows ?? []).map((row) => row.map(wordsOf));
}
const certify = (reference: string, datedOn: string | null) =>
  bench.get('saveLotCertificate', {
    params: { id: shop.lots.scent },
    body: {
      reference,
      datedOn,
      details: {
        constituents: [{ name: 'Linalool', cas: '78-70-6', typicalPercent: '30' }],
        isComplete: true,
      },
    },
  });

describe('the papers of the lots in the product information file', () => {
  it('stand under impurities and traces: each with its date and supplier, and lots that have none', async () => {
    expect(await certificateRows()).toEqual([]);
    await makeFirmBase(bench, shop, '800');
    await certify('L24-0311', '2026-11-03');
    await fillTins(bench, shop, 2);
    await certify('L24-0311 b', null);
    const rows = await certificateRows();
    expect(rows.map(([material]) => material)).toEqual([
      'Lavender oil',
      'Lavender oil',
      'Shea butter',
      'Sunflower oil',
    ]);
    expect(rows[0]?.slice(2)).toEqual(['L24-0311', '3 November 2026', 'Test Supplies']);
    expect(rows[1]?.slice(2)).toEqual(['L24-0311 b', 'no date on it', 'Test Supplies']);
    expect(rows[2]?.slice(2)).toEqual(['none', '', 'Test Supplies']);
  });
});

describe('the file of a product that is sold in the United States alone', () => {
  const sellIn = async (markets: ('GB' | 'US')[]) => {
    const product = (await bench.get('listProducts')).find((row) => row.id === shop.product);
    if (!product) throw new Error('the bench sells it');
    const { id, version, details } = product;
    await bench.get('saveProduct', { body: { id, version, details: { ...details, markets } } });
  };
  const sources = async () => {
    const { chapters } = await bench.get('getProductFile', { params: { id: shop.product } });
    return chapters.map(({ source }) => (source === null ? '' : wordsOf(source)));
  };

  it('says of every heading whose law it is, and asks for no notification or person elsewhere', async () => {
    await sellIn(['US']);
    for (const source of await sources()) {
      expect(source).toMatch(
        /^Heading of Regulation \(EC\) No 1223\/2009.*does not hold in the United States/,
      );
    }
    expect(await chapterOf('notification')).toBeUndefined();
    const entries = (await chapterOf('description'))?.entries.map(({ label }) => wordsOf(label)) ?? [];
    expect(entries).toContain('Responsible person for the United States');
    expect(entries.join()).not.toContain('Great Britain');
  });

  it('has the headings as law asks for them where it is sold in Great Britain too', async () => {
    await sellIn(['GB', 'US']);
    expect((await sources()).join()).not.toContain('does not hold in the United States');
    expect(await chapterOf('notification')).toBeDefined();
  });
});
