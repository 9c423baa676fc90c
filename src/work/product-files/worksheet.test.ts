import { strFromU8, unzipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench } from '../../../test/workshop/build-making.ts';
import { nameWorkshop } from '../../../test/workshop/build-order.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { textOfPdf } from '../../../test/workshop/render-pdf.ts';
import { exact } from '../../core/quantity/index.ts';
import { say } from '../../words/index.ts';
import { shownMargin } from './expose-substances.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
});
afterEach(() => bench.close());

const params = () => ({ id: shop.mixtureRevision });
const sheet = () => bench.get('getWorksheet', { params: params() });
const wordsOf = (text: unknown): string => (typeof text === 'string' ? text : say(text as never));
const rows = async () =>
  (await sheet()).chapters
    .find(({ key }) => key === 'substance-exposure')
    ?.tables[0]?.rows.map((row) => row.map(wordsOf)) ?? [];
const rowOf = async (name: string) => (await rows()).find(([first]) => first === name) ?? [];
const point = (milligramsPerKgDay: string, more: object = {}) =>
  bench.ask('savePointOfDeparture', {
    body: {
      details: {
        name: 'Linalool',
        milligramsPerKgDay,
        route: 'systemic',
        source: 'Invented for the test',
        ...more,
      },
    },
  });

describe('the worksheet for the assessor', () => {
  it('says that it prepares, and leaves a substance without a point of departure to the assessor', async () => {
    const paper = await sheet();
    expect(say(paper.sentence)).toContain('It prepares the assessment and replaces nothing of it.');
    expect((await rowOf('Linalool'))[3]).toBe('none typed in');
    expect((await rowOf('Linalool'))[4]).toBe('');
  });

  // Body lotion: 123.2 mg/kg/day (SCCS/1647/22, Table 3A). SED = 123.2 x percent/100 x 50/100, worked out here anew.
  it('gives exposure by the table, on the most that may be in it, and half of it absorbed', async () => {
    const [, percent, exposure] = await rowOf('Linalool');
    expect(Number(exposure)).toBeCloseTo((123.2 * Number(percent) * 50) / 10_000, 6);
  });

  it('asks a hundred: exactly that is enough, the least below is not', async () => {
    const [, , exposure] = await rowOf('Linalool');
    const hundredfold = exact(exposure ?? '0')
      .times(100)
      .toFixed();
    await point(hundredfold);
    expect((await rowOf('Linalool')).slice(4)).toEqual([
      '100',
      expect.stringContaining('at least what is asked'),
    ]);
    const [known] = await bench.get('listPointsOfDeparture');
    if (!known) throw new Error('it was typed in');
    const milligramsPerKgDay = exact(hundredfold).minus('0.000000001').toFixed();
    const details = { ...known.details, milligramsPerKgDay };
    await bench.get('savePointOfDeparture', { body: { id: known.id, version: known.version, details } });
    expect((await rowOf('Linalool')).slice(4)).toEqual([
      '99.99',
      expect.stringContaining('below what is asked'),
    ]);
    expect(
      wordsOf((await sheet()).chapters.find(({ key }) => key === 'substance-exposure')?.cautions[0]),
    ).toContain('Linalool');
  });

  it('takes half of an oral dose, or what was typed', async () => {
    const [, , exposure] = await rowOf('Linalool');
    const twice = exact(exposure ?? '0')
      .times(200)
      .toFixed();
    await point(twice, { route: 'oral' });
    expect((await rowOf('Linalool'))[4]).toBe('100');
  });

  it('never rounds a margin up', () => {
    expect(shownMargin(exact('99.99999'))).toBe('99.99');
    expect(shownMargin(exact('100'))).toBe('100');
    expect(shownMargin(exact('1234.5678'))).toBe('1234');
  });

  it('keeps one point of departure for a substance, above nought', async () => {
    await point('10');
    expect(codesOf(await point('20', { name: 'linalool' }))).toEqual(['point-of-departure-twice']);
    expect(codesOf(await point('0', { name: 'Geraniol' }))).toEqual(['dose-not-positive']);
    const [known] = await bench.get('listPointsOfDeparture');
    if (!known) throw new Error('it was typed in');
    const details = { ...known.details, isTakenOut: true };
    await bench.get('savePointOfDeparture', { body: { id: known.id, version: 1, details } });
    expect(await bench.get('listPointsOfDeparture')).toEqual([]);
    expect(await point('20')).toMatchObject({ ok: true });
  });

  it('says what is from memory and what is open', async () => {
    const text = textOfPdf((await bench.get('getWorksheetPdf', { params: params() })).bytes);
    for (const part of ['What is from memory', 'Open questions', 'Limits: Great Britain', 'How it is made'])
      expect(text).toContain(part);
  });

  it('goes to the assessor as one file, the same bytes each time', async () => {
    const zip = await bench.get('getAssessorZip', { params: params() });
    const files = unzipSync(zip.bytes);
    expect(Object.keys(files)).toEqual(expect.arrayContaining(['worksheet.pdf', 'data.json', 'index.txt']));
    expect(Object.keys(files).filter((name) => name.startsWith('materials/'))).toHaveLength(3);
    expect(Object.keys(files).filter((name) => name.startsWith('labels/')).length).toBeGreaterThan(1);
    const data = JSON.parse(strFromU8(files['data.json'] ?? new Uint8Array()));
    expect(data.materials).toHaveLength(3);
    const again = await bench.get('getAssessorZip', { params: params() });
    expect(Buffer.from(again.bytes).equals(Buffer.from(zip.bytes))).toBe(true);
  });

  it('takes a base, which no product is filled from, with a planned label', async () => {
    const zip = await bench.get('getAssessorZip', { params: { id: shop.baseRevision } });
    expect(Object.keys(unzipSync(zip.bytes))).toContain('labels/planned-GB.txt');
  });
});
