import { strFromU8, unzipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildOrder, buildTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { buildPng } from '../../../test/workshop/build-png.ts';
import { smallPdf, writtenFile } from '../../../test/workshop/build-product-file.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { inkRows, pdfImages, pdfInfo, renderPage, textOfPdf } from '../../../test/workshop/render-pdf.ts';
import { must, type Problem } from '../../core/problem.ts';
import { layoutPaper, type PlacedText } from '../../print/layout/index.ts';
import { loadFaces } from '../../print/paint/index.ts';
import { say, sayProblem } from '../../words/index.ts';
import { layOutWritten } from './lay-out-written.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
});
afterEach(() => bench.close());

const params = () => ({ id: shop.product });
const file = () => bench.get('getProductFile', { params: params() });
const materialIds = () => [shop.materials.shea, shop.materials.oil, shop.materials.scent];
const write = async (more: Parameters<typeof writtenFile>[1] = {}) =>
  bench.ask('saveProductFile', {
    params: params(),
    body: { version: (await file()).version, details: writtenFile(materialIds(), more) },
  });
const codes = async () => (await file()).missing.map(({ says }) => says.code);
const attach = (heading: 'claims' | 'physical', name = 'Study.pdf') =>
  bench.get('fileUnderHeading', {
    params: params(),
    body: { heading, name, base64: smallPdf(name) },
  });
const wordsOf = (text: unknown): string => (typeof text === 'string' ? text : say(text as never));

describe('the product information file', () => {
  it('lists what is missing, each with where it is mended, and lacks nothing of it once it is written', async () => {
    const before = await file();
    expect(before.missing.map(({ says }) => says.code)).toEqual(
      expect.arrayContaining(['pf-gap-description', 'pf-gap-gmp', 'pf-gap-animal', 'pf-gap-claims']),
    );
    expect(before.missing.find(({ says }) => says.code === 'pf-gap-gmp')).toMatchObject({
      to: `/products/${shop.product}/file/change`,
      hash: 'method',
    });
    await write();
    const left = await codes();
    expect(
      left.filter((code) => /description|physical|stability|use$|gmp|claims|animal|notify/.test(code)),
    ).toEqual([]);
    expect(left).toContain('pf-gap-report-file');
    expect(left).toContain('pf-gap-cas');
  });

  it('says of each part how much it lacks, of the safety report what all of its parts lack, and counts the parts', async () => {
    const { chapters, missing, sentence } = await file();
    const lacks = new Map(chapters.map(({ key, lacks: count }) => [key, count]));
    const keys = new Set(missing.map(({ chapter }) => chapter));
    expect([...keys].filter((key) => !lacks.has(key))).toEqual([]);
    for (const key of keys)
      expect([key, lacks.get(key)]).toEqual([key, missing.filter(({ chapter }) => chapter === key).length]);
    const parts = chapters.filter(({ level }) => level === 2).map((one) => one.lacks);
    expect(lacks.get('safety-report')).toBe(parts.reduce((sum, count) => sum + count, 0));
    expect(lacks.get('composition')).toBeGreaterThan(0);
    expect(sentence.parameters).toMatchObject({ n: missing.length, parts: keys.size, of: chapters.length });
    expect(chapters.filter(({ state, lacks: count }) => state === 'there' && count > 0)).toEqual([]);
    expect(chapters.filter(({ state, lacks: count }) => state === 'missing' && count === 0)).toEqual([]);
  });

  it('fills the headings of Annex I in the law’s order, and leaves the assessor his', async () => {
    const { chapters } = await file();
    // Annex I, part A, headings 1 to 10; Article 11(2) around them.
    expect(chapters.map(({ key }) => key)).toEqual([
      'description',
      'safety-report',
      'composition',
      'physical',
      'microbiology',
      'impurities',
      'use',
      'exposure',
      'substance-exposure',
      'toxicology',
      'effects',
      'information',
      'part-b',
      'method',
      'claims',
      'animal-testing',
      'notification',
      'label',
      'batches',
    ]);
    expect(chapters.filter(({ state }) => state === 'assessor').map(({ key }) => key)).toEqual([
      'toxicology',
      'part-b',
    ]);
  });

  it('names the report of each market that the check asks, and the markets that have none', async () => {
    const [first] = await bench.get('listReports');
    if (!first) throw new Error('the bench has a report');
    const { details } = first;
    await bench.get('saveReport', {
      body: { details: { ...details, reference: 'R-9', signedOn: '2026-11-01', markets: ['GB', 'EU'] } },
    });
    const told = async () => {
      const part = (await file()).chapters.find(({ key }) => key === 'part-b');
      return part?.entries.map(({ text }) => wordsOf(text)).filter((one) => /^R-|Britain|Ireland/.test(one));
    };
    expect((await codes()).filter((code) => code.startsWith('pf-gap-report-m'))).toEqual([]);
    expect(await told()).toEqual(['R-1', 'Northern Ireland', 'R-9', 'Great Britain']);
    const row = (await bench.get('listProducts')).find(({ id }) => id === shop.product);
    if (!row) throw new Error('the bench sells it');
    const product = { ...row.details, markets: ['GB' as const, 'NI' as const, 'EU' as const, 'US' as const] };
    await bench.get('saveProduct', { body: { id: row.id, version: row.version, details: product } });
    expect((await file()).missing).toContainEqual(
      expect.objectContaining({
        says: expect.objectContaining({ code: 'pf-gap-report-markets', parameters: { markets: 'US' } }),
      }),
    );
  });

  it('counts complaints against what was sold', async () => {
    await makeFirmBase(bench, shop, '300');
    await buildTins(bench, shop, 5);
    const order = await buildOrder(bench, shop.product, 4);
    await bench.get('dispatchOrder', { params: { id: order }, body: {} });
    await bench.get('enterComplaint', {
      body: {
        productId: shop.product,
        receivedOn: '2026-11-26',
        details: { kind: 'skin-reaction', said: 'Itches.', effect: 'undesirable' },
      },
    });
    const effects = (await file()).chapters.find(({ key }) => key === 'effects');
    // 1 of 4 sold is 250 in a thousand.
    expect(effects?.entries.map(({ text }) => wordsOf(text))).toEqual([
      '4 units',
      '0, 0 per thousand sold',
      '1, 250 per thousand sold',
      '0, 0 per thousand sold',
    ]);
  });

  it('is kept ten years after the last dispatch, and a release after it moves that on', async () => {
    await makeFirmBase(bench, shop, '600');
    await buildTins(bench, shop, 5);
    const order = await buildOrder(bench, shop.product, 4);
    bench.setClock('2026-11-27T09:00:00Z');
    await bench.get('dispatchOrder', { params: { id: order }, body: {} });
    const sent = await file();
    expect(sent.keptUntil).toBe('2036-11-27');
    const last = sent.chapters.at(-1);
    expect(wordsOf(last?.says[0])).toContain('ten years after the last dispatch, on 27 November 2026');
    bench.setClock('2026-11-28T09:00:00Z');
    await buildTins(bench, shop, 3);
    expect((await file()).keptUntil).toBe('2036-11-28');
  });

  it('refuses an old version, an unknown row of the exposure table, and claims beside none', async () => {
    await write();
    const old = { params: params(), body: { version: null, details: writtenFile(materialIds()) } };
    expect(codesOf(await bench.ask('saveProductFile', old))).toEqual(['changed-meanwhile']);
    expect(codesOf(await write({ exposureType: 'moon-cream' }))).toEqual(['exposure-type-unknown']);
    expect(codesOf(await write({ claims: [{ claim: 'Softens', proof: '' }] }))).toEqual(['claims-and-none']);
  });

  it('holds files by heading until they are taken out, and keeps them all the same', async () => {
    const study = await attach('claims');
    const under = async () =>
      (await file()).chapters.find(({ key }) => key === 'claims')?.files.map(({ name }) => name);
    expect(await under()).toEqual(['Study.pdf']);
    const takeOut = { params: params(), body: { heading: 'claims' as const, attachmentId: study.id } };
    await bench.get('takeFileOut', takeOut);
    expect(await under()).toEqual([]);
    expect(codesOf(await bench.ask('takeFileOut', takeOut))).toEqual(['file-not-under-heading']);
    expect((await bench.get('getAttachment', { params: { id: study.id } })).fileName).toBe('Study.pdf');
  });

  it('takes a PDF or a picture by what is in it, whatever it is called, and says how large it may be', async () => {
    const put = (name: string, bytes: Uint8Array) =>
      bench.ask('fileUnderHeading', {
        params: params(),
        body: { heading: 'physical', name, base64: Buffer.from(bytes).toString('base64') },
      });
    const png = buildPng(40, 30);
    expect(codesOf(await put('Study.pdf', Buffer.from('PK\u0003\u0004 a folder')))).toEqual([
      'file-not-pdf-or-picture',
    ]);
    expect(must(await put('Photo.pdf', png))).toMatchObject({ kind: 'png', name: 'Photo.pdf' });
    expect(codesOf(await put('Cut.png', png.subarray(0, png.length - 12)))).toEqual(['picture-not-readable']);
    const garbled = Uint8Array.from(png, (byte, at) => (at > 45 && at < png.length - 20 ? 7 : byte));
    expect(codesOf(await put('Garbled.png', garbled))).toEqual(['picture-not-readable']);
    // 8 MB and no byte more: what stands after the end is left alone.
    const padded = (size: number) => Buffer.concat([png, Buffer.alloc(size - png.length)]);
    expect(codesOf(await put('Large.png', padded(8_000_001)))).toEqual(['picture-too-large']);
    expect(codesOf(await put('Large.png', padded(8_000_000)))).toEqual([]);
    const { problems = [] } = (await put('Large.png', padded(8_000_001))) as { problems?: Problem[] };
    expect(problems.map((each) => sayProblem(each).says)).toEqual([
      'Large.png has 9 MB; a picture may have 8 MB at most.',
    ]);
  });

  it('shows a picture under its heading, in the folder and on paper, and names one that paper cannot show', async () => {
    const put = (name: string, bytes: Uint8Array) =>
      bench.get('fileUnderHeading', {
        params: params(),
        body: { heading: 'physical', name, base64: Buffer.from(bytes).toString('base64') },
      });
    const seen = await put('Tin.png', buildPng(400, 300, true));
    const interlaced = buildPng(400, 300);
    interlaced[28] = 1;
    await put('Woven.png', interlaced);
    const { chapters } = await file();
    expect(
      chapters.find(({ key }) => key === 'physical')?.files.map(({ name, kind }) => [name, kind]),
    ).toEqual([
      ['Tin.png', 'png'],
      ['Woven.png', 'png'],
    ]);
    expect(await bench.get('getAttachment', { params: { id: seen.id } })).toMatchObject({
      media: 'image/png',
    });
    const zip = unzipSync((await bench.get('getProductFileZip', { params: params() })).bytes);
    expect(Object.keys(zip)).toContain('by-heading/04-physical/Tin.png');
    const pdf = (await bench.get('getProductFilePdf', { params: params() })).bytes;
    expect(textOfPdf(pdf)).toContain('Woven.png');
    expect(pdfImages(pdf)).toEqual(['400 300']);
  });
});

describe('the file on paper', () => {
  it('leaves ink in the box of every text, on every page, and says on each that it assesses nothing', async () => {
    await write();
    const view = await file();
    const { details } = await bench.get('getWorkshop');
    if (!details) throw new Error('the workshop has begun');
    const pdf = (await bench.get('getProductFilePdf', { params: params() })).bytes;
    const { pages } = must(layoutPaper(layOutWritten(view, details), loadFaces()));
    expect(pages.length).toBeGreaterThan(2);
    for (const [index, page] of pages.entries()) {
      const raster = renderPage(pdf, 150, index + 1);
      const texts = page.items.filter((item): item is PlacedText => item.kind === 'text');
      expect(texts.filter(({ ink }) => inkRows(raster, ink).length === 0)).toEqual([]);
    }
    const printed = textOfPdf(pdf)
      .split('\f')
      .filter((page) => page.trim() !== '');
    expect(printed).toHaveLength(pages.length);
    for (const [index, page] of printed.entries()) {
      expect(page).toContain('no assessment');
      expect(page).toContain(`Page ${index + 1} of ${pages.length}`);
    }
    expect(pdfInfo(pdf)).toMatch(/Tagged:\s+yes/);
  }, 60_000);

  it('opens with what is missing', async () => {
    const text = textOfPdf((await bench.get('getProductFilePdf', { params: params() })).bytes);
    expect(text.indexOf('What is missing')).toBeGreaterThan(0);
    expect(text.indexOf('What is missing')).toBeLessThan(text.indexOf('Quantitative and qualitative'));
  });

  it('is one folder: the PDF, files by heading, the report, batch records, label texts, data, an index', async () => {
    await makeFirmBase(bench, shop, '300');
    await buildTins(bench, shop, 4);
    await attach('claims');
    const [report] = await bench.get('listReports');
    await bench.get('attachReportFile', {
      params: { id: report?.id ?? '' },
      body: { name: 'Report 1.pdf', base64: smallPdf('report') },
    });
    const zip = await bench.get('getProductFileZip', { params: params() });
    const files = unzipSync(zip.bytes);
    expect(Object.keys(files).sort()).toEqual([
      'assessors-report/R-1/Report 1.pdf',
      'batch-records/batch-record-LB-0001.pdf',
      'by-heading/15-claims/Study.pdf',
      'data.json',
      'index.txt',
      'labels/GB.pdf',
      'labels/GB.txt',
      'labels/NI.pdf',
      'labels/NI.txt',
      'product-information-file.pdf',
    ]);
    expect(strFromU8(files['labels/GB.txt'] ?? new Uint8Array())).toContain('Lavender butter');
    expect(strFromU8(files['index.txt'] ?? new Uint8Array())).toContain(
      'batch-records/batch-record-LB-0001.pdf',
    );
    expect(JSON.parse(strFromU8(files['data.json'] ?? new Uint8Array()))).toMatchObject({
      productName: 'Lavender butter',
    });
  });

  it('says on page, PDF and in the folder what the labels say as they were designed, and shows them at true size', async () => {
    await bench.get('saveLabelDesign', {
      params: params(),
      body: {
        version: null,
        details: {
          pieces: [
            { id: 'whole', role: 'whole', surface: { shape: 'round', diameterMm: 70 } },
            {
              id: 'sticker',
              role: 'sticker',
              surface: { shape: 'rectangle', widthMm: 44, heightMm: 18 },
              code: 'in-house',
            },
          ],
        },
      },
    });
    const label = (await file()).chapters.find(({ key }) => key === 'label');
    const said = new Map(label?.entries.map(({ label: name, text }) => [name, wordsOf(text)]));
    expect([...said.keys()]).toEqual([
      'Great Britain: Whole label',
      'Great Britain: Sticker',
      'Northern Ireland: Whole label',
      'Northern Ireland: Sticker',
    ]);
    expect(said.get('Great Britain: Sticker')).toMatch(/Batch LOT-0000\nBest used before .*\nQR code: /s);
    expect(said.get('Great Britain: Whole label')).not.toContain('LOT-0000');
    expect(textOfPdf((await bench.get('getProductFilePdf', { params: params() })).bytes)).toContain(
      'Great Britain: Sticker',
    );
    const files = unzipSync((await bench.get('getProductFileZip', { params: params() })).bytes);
    const text = strFromU8(files['labels/GB.txt'] ?? new Uint8Array());
    expect(text).toContain('[Sticker]\nBatch LOT-0000');
    expect(text).not.toContain('[Front]');
    const drawn = files['labels/GB.pdf'] ?? new Uint8Array();
    expect(textOfPdf(drawn)).toContain('LOT-0000');
    expect(renderPage(drawn, 40).grey.some((grey) => grey < 128)).toBe(true);
  });

  it('names the label that lacks something, and where it is designed', async () => {
    const [known] = (await bench.get('listProducts')).filter(({ id }) => id === shop.product);
    if (!known) throw new Error('the bench sells it');
    const { id, version, details } = known;
    await bench.get('saveProduct', { body: { id, version, details: { ...details, functionText: '' } } });
    const gap = (await file()).missing.find(({ says }) => says.code === 'pf-gap-label');
    expect(gap).toMatchObject({ chapter: 'label', to: `/labels/products/${shop.product}` });
  });

  it('has the same bytes for the same data, an hour later too', async () => {
    await makeFirmBase(bench, shop, '300');
    await buildTins(bench, shop, 4);
    const bytes = async () => Buffer.from((await bench.get('getProductFileZip', { params: params() })).bytes);
    const first = await bytes();
    bench.setClock('2026-11-26T09:05:00Z');
    expect((await bytes()).equals(first)).toBe(true);
  });
});

describe('the notification', () => {
  const fields = async (market: 'GB' | 'EU' = 'GB') =>
    (await bench.get('getNotification', { params: params(), query: { market } })).fields;
  const textOf = async (key: string, market: 'GB' | 'EU' = 'GB') =>
    (await fields(market)).find((one) => one.key === key)?.text;

  it('gives each field to be copied, the responsible person by portal, and says what is missing', async () => {
    expect(await textOf('responsible')).toBe('Test Bench');
    expect(await textOf('responsible', 'EU')).toBe('Test Agents');
    expect(await textOf('formula')).toMatch(/^Butyrospermum Parkii Butter|^Helianthus/m);
    expect((await fields()).filter(({ gap }) => gap !== null).map(({ key }) => key)).toEqual([
      'category',
      'contact',
      'nano',
      'cmr',
    ]);
  });

  it('adds up to a hundred percent', async () => {
    const lines = (await textOf('formula'))?.split('\n') ?? [];
    const percents = lines.map((line) => Number(/([\d.]+) %$/.exec(line)?.[1]));
    expect(percents.length).toBeGreaterThan(2);
    expect(percents.reduce((sum, one) => sum + one, 0)).toBeCloseTo(100, 3);
  });
});
