import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { line } from '../../../test/workshop/build-formula.ts';
import {
  buildMakingBench,
  type MakingBench,
  makeFirmBase,
  reviseBase,
} from '../../../test/workshop/build-making.ts';
import { buildOrder, buildTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { textOfPdf } from '../../../test/workshop/render-pdf.ts';
import { say } from '../../words/index.ts';

let bench: TestWorkshop;
let shop: MakingBench;
let report = '';

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
  const [entered] = await bench.get('listReports');
  if (!entered) throw new Error('a report was entered');
  report = entered.id;
  // Signed on the day on which everything was written down.
  await bench.get('saveReport', {
    body: { id: report, version: entered.version, details: { ...entered.details, signedOn: '2026-11-26' } },
  });
});
afterEach(() => bench.close());

const changes = () => bench.get('getReportChanges', { params: { id: report } });
const wordsOf = (text: unknown): string => (typeof text === 'string' ? text : say(text as never));
const chapter = async (key: string) => (await changes()).chapters.find((one) => one.key === key);
const tableIn = async (key: string) =>
  (await chapter(key))?.tables[0]?.rows.map((row) => row.map(wordsOf)) ?? [];

describe('what changed since a report was signed', () => {
  it('is nothing on the day itself', async () => {
    expect(say((await changes()).sentence)).toContain('nothing changed that the tool can see');
  });

  it('names the revision in force and each line whose share changed', async () => {
    bench.setClock('2026-12-03T09:00:00Z');
    await reviseBase(bench, shop, ['600', '400']);
    expect(await tableIn('Quiet base')).toEqual([
      ['Shea butter', '65', '60'],
      [expect.any(String), '35', '40'],
    ]);
    expect(wordsOf((await chapter('Quiet base'))?.says[0])).toContain('3 December 2026');
    expect(say((await changes()).sentence)).toContain('1 thing changed: 1 formula.');
  });

  it('leaves a trial out: nothing of it is sold', async () => {
    // A batch of it fixes the first revision: what is written then is the second.
    await makeFirmBase(bench, shop, '300');
    bench.setClock('2026-12-03T09:00:00Z');
    const params = { id: shop.base };
    const { latest } = await bench.get('getFormula', { params });
    if (!latest) throw new Error('the base has a revision');
    const lines = latest.details.lines.map((each) => ({ ...each, grams: '500' }));
    const details = { ...latest.details, lines, standing: 'trial' as const };
    const trial = await bench.get('saveRevision', { params, body: { version: latest.version, details } });
    expect(trial.number).toBe(2);
    expect(await tableIn('Quiet base')).toEqual([]);
    const forSale = { ...details, standing: 'for-sale' as const };
    await bench.get('saveRevision', { params, body: { version: trial.version, details: forSale } });
    expect(await tableIn('Quiet base')).toHaveLength(2);
  });

  it('takes a draft that was written anew as it was written last', async () => {
    await reviseBase(bench, shop, ['640', '360']);
    expect(await tableIn('Quiet base')).toEqual([]);
    bench.setClock('2026-12-03T09:00:00Z');
    await reviseBase(bench, shop, ['600', '400']);
    expect((await tableIn('Quiet base'))[0]).toEqual(['Shea butter', '64', '60']);
  });

  it('names a supplier that changed, and not what a pack costs', async () => {
    bench.setClock('2026-12-03T09:00:00Z');
    const material = await bench.get('getMaterial', { params: { id: shop.materials.shea } });
    await bench.get('saveMaterial', {
      body: {
        id: material.id,
        version: material.version,
        details: { ...material.details, supplier: 'Other Fats', packPrice: '99' },
      },
    });
    expect(await tableIn('materials')).toEqual([
      [material.details.name, 'supplier', material.details.supplier, 'Other Fats'],
    ]);
  });

  it('names a material that is new in it', async () => {
    bench.setClock('2026-12-03T09:00:00Z');
    const wax = await buildIngredient(bench, { name: 'New wax' });
    const params = { id: shop.base };
    const { latest } = await bench.get('getFormula', { params });
    if (!latest) throw new Error('the base has a revision');
    const lines = [...latest.details.lines, { ...line(wax, '10'), stage: 'Melt' }];
    const details = { ...latest.details, lines };
    await bench.get('saveRevision', { params, body: { version: latest.version, details } });
    expect((await chapter('materials'))?.entries.map(({ text }) => text)).toEqual(['New wax']);
  });

  it('counts complaints and what was sold since, and nothing from before', async () => {
    await makeFirmBase(bench, shop, '600');
    await buildTins(bench, shop, 8);
    const send = async () => {
      const id = await buildOrder(bench, shop.product, 3, { wantedBy: '2026-12-20' });
      await bench.get('dispatchOrder', { params: { id }, body: {} });
    };
    await send();
    bench.setClock('2026-12-03T09:00:00Z');
    await send();
    await bench.get('enterComplaint', {
      body: {
        productId: shop.product,
        receivedOn: '2026-12-03',
        details: { kind: 'packaging', said: 'The lid sticks.', effect: 'none' },
      },
    });
    const sold = (await chapter('sold'))?.entries.map(({ label, text }) => [label, wordsOf(text)]);
    expect(sold).toContainEqual(['Lavender butter', '3 units']);
    expect(await tableIn('complaints')).toHaveLength(1);
  });

  it('says that the review is near sixty days before, and past the day after', async () => {
    // Reviewed by 1 October 2028: sixty days before is 2 August.
    const said = async (day: string) => {
      bench.setClock(`${day}T12:00:00Z`);
      const [one] = await bench.get('listReports');
      return [one?.isClose, one?.isPast, say((await changes()).sentence).includes('soon')];
    };
    expect(await said('2028-08-01')).toEqual([false, false, false]);
    expect(await said('2028-08-02')).toEqual([true, false, true]);
    expect(await said('2028-10-01')).toEqual([true, false, true]);
    expect(await said('2028-10-02')).toEqual([false, true, false]);
  });

  it('goes to the assessor as a PDF', async () => {
    const pdf = await bench.get('getReportChangesPdf', { params: { id: report } });
    expect(textOfPdf(pdf.bytes)).toContain('What changed since report');
  });
});
