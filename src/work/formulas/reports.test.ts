import { Buffer } from 'node:buffer';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildBase, buildMixture, buildReport, line } from '../../../test/workshop/build-formula.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import type { Paper } from '../use-case.ts';

let bench: TestWorkshop;
let fat: string;
let mixture: string;
beforeEach(async () => {
  bench = await openTestWorkshop();
  fat = await buildIngredient(bench, { name: 'Shea butter' });
  mixture = (await buildMixture(bench, [line(fat, '100')])).formulaId;
});
afterEach(() => bench.close());

const details = (more: object = {}) => ({
  reference: 'R-7',
  assessor: 'A. N. Assessor',
  signedOn: '2026-10-01',
  reviewBy: '2027-10-01',
  baseFormulaId: null,
  formulaIds: [mixture],
  markets: ['GB' as const],
  uses: ['leave-on' as const],
  ranges: [{ materialId: fat, leastPercent: '10', mostPercent: '100' }],
  ...more,
});

describe('a report', () => {
  it('keeps what it covers', async () => {
    const { id } = await bench.get('saveReport', { body: { details: details() } });
    expect(await bench.get('listReports')).toEqual([
      {
        id,
        version: 1,
        details: { ...details(), productIds: [] },
        file: null,
        isPast: false,
        isClose: false,
        outweighed: [],
      },
    ]);
  });

  it('is outweighed by a later one where that covers the same, and counts where it does not', async () => {
    const other = (await buildMixture(bench, [line(fat, '100')], { name: 'Balm', code: 'BA' })).formulaId;
    const save = (more: object) => bench.get('saveReport', { body: { details: details(more) } });
    await save({ markets: ['GB', 'NI'], formulaIds: [mixture, other] });
    await save({ reference: 'R-8', signedOn: '2026-11-01', markets: ['GB', 'EU'] });
    const outweighed = async () =>
      (await bench.get('listReports')).map((row) => [row.details.reference, row.outweighed]);
    const formula = (await bench.get('getFormula', { params: { id: mixture } })).name;
    expect(await outweighed()).toEqual([
      ['R-7', [{ by: 'R-8', formula, markets: ['GB'] }]],
      ['R-8', []],
    ]);
    const check = await bench.get('listReports');
    const newer = check.find((row) => row.details.reference === 'R-8');
    await bench.get('saveReport', {
      body: {
        id: newer?.id ?? '',
        version: 1,
        details: details({ reference: 'R-8', signedOn: '2026-11-01', uses: ['rinse-off'] }),
      },
    });
    expect((await outweighed())[0]).toEqual(['R-7', []]);
  });

  it('is changed as a whole, its file stays', async () => {
    const id = await buildReport(bench, { formulaIds: [mixture] });
    await attach(id, 'signed.pdf', '%PDF-1.7\n');
    await bench.get('saveReport', {
      body: { id, version: 1, details: details({ reference: 'R-8', ranges: [] }) },
    });
    expect(await bench.get('listReports')).toMatchObject([
      { version: 2, details: { reference: 'R-8', ranges: [] }, file: { name: 'signed.pdf' } },
    ]);
  });

  it('is past from the day after the one on which it was to be looked at again', async () => {
    await buildReport(bench, { formulaIds: [mixture], reviewBy: '2026-11-26' });
    const isPast = async () => (await bench.get('listReports'))[0]?.isPast;
    expect(await isPast()).toBe(false);
    bench.setClock('2026-11-27T08:00:00Z');
    expect(await isPast()).toBe(true);
  });

  it('is refused from the second of two tabs', async () => {
    const id = await buildReport(bench, { formulaIds: [mixture] });
    await bench.get('saveReport', { body: { id, version: 1, details: details() } });
    expect(await bench.ask('saveReport', { body: { id, version: 1, details: details() } })).toMatchObject({
      ok: false,
      problems: [{ code: 'changed-meanwhile', parameters: { holds: 'R-7' } }],
    });
  });

  it('is refused where it covers nothing, crosses, or names what is not there', async () => {
    const base = (await buildBase(bench, [line(fat, '1')])).formulaId;
    const ask = async (more: object) =>
      codesOf(await bench.ask('saveReport', { body: { details: details(more) } }));
    expect(await ask({ formulaIds: [] })).toEqual(['report-covers-nothing']);
    expect(await ask({ formulaIds: [], baseFormulaId: base })).toEqual([]);
    expect(await ask({ reviewBy: '2026-10-01' })).toEqual(['review-before-signing']);
    expect(await ask({ baseFormulaId: mixture })).toEqual(['report-base-is-mixture']);
    expect(await ask({ formulaIds: [mixture, mixture] })).toEqual(['listed-twice']);
    const range = { materialId: fat, leastPercent: '10', mostPercent: '9.99' };
    expect(await ask({ ranges: [range] })).toEqual(['report-range-crossed']);
    expect(await ask({ ranges: [{ ...range, mostPercent: '10' }] })).toEqual([]);
    expect(
      await ask({
        formulaIds: ['lost'],
        baseFormulaId: 'lost',
        ranges: [{ ...range, mostPercent: '10', materialId: 'lost' }],
      }),
    ).toEqual(['thing-not-found', 'thing-not-found', 'thing-not-found']);
    expect(await ask({ markets: [] })).toEqual(['value-too-small']);
    expect(await ask({ signedOn: '2026-02-30' })).toEqual(['format-date']);
  });
});

const attach = (id: string, name: string, text: string | Buffer) =>
  bench.ask('attachReportFile', {
    params: { id },
    body: { name, base64: Buffer.from(text as string).toString('base64') },
  });

const readFile = async (id: string) => (await bench.get('getReportFile', { params: { id } })) as Paper;

describe("a report's file", () => {
  let report: string;
  beforeEach(async () => {
    report = await buildReport(bench, { formulaIds: [mixture] });
  });

  it('comes back byte by byte', async () => {
    const bytes = Buffer.concat([Buffer.from('%PDF-1.7\n'), Buffer.from([0, 255, 10, 13, 128])]);
    expect(codesOf(await attach(report, 'signed.pdf', bytes))).toEqual([]);
    const paper = await readFile(report);
    expect(paper.fileName).toBe('signed.pdf');
    expect(Buffer.from(paper.bytes).equals(bytes)).toBe(true);
    const [view] = await bench.get('listReports');
    // SHA-256 by the system's own sha256sum of the same fourteen bytes.
    expect(view?.file).toEqual({
      name: 'signed.pdf',
      bytes: 14,
      sha256: '8817cbe5bb815931dd04af6cddf5fac984e9b0fade4682fc643eae08e9d81923',
    });
  });

  it('is replaced by a later one, and the earlier stays in the file', async () => {
    await attach(report, 'first.pdf', '%PDF-1.7 first');
    await attach(report, 'second.pdf', '%PDF-1.7 second');
    const paper = await readFile(report);
    expect(Buffer.from(paper.bytes).toString()).toBe('%PDF-1.7 second');
    const kept = await bench.context.storage.db.selectFrom('attachment').select('name').execute();
    expect(kept.map((row) => row.name).sort()).toEqual(['first.pdf', 'second.pdf']);
  });

  it('is refused where it is no PDF, is empty, or there is no report', async () => {
    expect(codesOf(await attach(report, 'page.html', '<html>%PDF-'))).toEqual(['file-not-pdf']);
    expect(codesOf(await attach(report, 'cut.pdf', '%PDF'))).toEqual(['file-not-pdf']);
    expect(codesOf(await attach(report, 'empty.pdf', ''))).toEqual(['file-not-pdf']);
    expect(codesOf(await attach('lost', 'signed.pdf', '%PDF-1.7'))).toEqual(['thing-not-found']);
    const broken = { name: 'x.pdf', base64: 'not base64!' };
    expect(codesOf(await bench.ask('attachReportFile', { params: { id: report }, body: broken }))).toEqual([
      'format-base64',
    ]);
  });

  it('has at most twenty megabytes', async () => {
    const sized = (bytes: number) => Buffer.concat([Buffer.from('%PDF-'), Buffer.alloc(bytes - 5)]);
    expect(codesOf(await attach(report, 'large.pdf', sized(20_000_000)))).toEqual([]);
    expect(codesOf(await attach(report, 'larger.pdf', sized(20_000_001)))).toEqual(['file-too-large']);
  });

  it('is not there before it is attached', async () => {
    expect(codesOf(await bench.ask('getReportFile', { params: { id: report } }))).toEqual([
      'report-without-file',
    ]);
    expect(codesOf(await bench.ask('getReportFile', { params: { id: 'lost' } }))).toEqual([
      'thing-not-found',
    ]);
  });
});
