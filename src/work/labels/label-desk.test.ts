import { describe, expect, it } from 'vitest';
import { buildPng } from '../../../test/workshop/build-png.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { extentMm, inkColumns, inkRows, renderPage } from '../../../test/workshop/render-pdf.ts';
import { countEntries } from '../../../test/workshop/small-file.ts';
import { labels } from '../../contract/index.ts';
import { must } from '../../core/problem.ts';
import { LABEL_ELEMENTS } from '../../print/layout/index.ts';

const at = openFillingBench();

type Piece = Partial<labels.DesignPiece> & Pick<labels.DesignPiece, 'id' | 'role' | 'surface'>;
const WHOLE: Piece = { id: 'whole', role: 'whole', surface: { shape: 'round', diameterMm: 62 } };
const STICKER: Piece = {
  id: 'sticker',
  role: 'sticker',
  surface: { shape: 'rectangle', widthMm: 44, heightMm: 18, cornerRadiusMm: 0 },
};
const design = (pieces: Piece[] = [WHOLE, STICKER], more: object = {}) => ({ pieces, ...more });

const GEOMETRY = {
  pageWidthMm: 210,
  pageHeightMm: 297,
  columns: 3,
  rows: 8,
  leftMm: 15,
  topMm: 20,
  pitchAcrossMm: 60,
  pitchDownMm: 32,
  label: { shape: 'rectangle' as const, widthMm: 50, heightMm: 24, cornerRadiusMm: 0 },
};

const params = () => ({ id: at.shop.product });
const save = (details: ReturnType<typeof design>, version: number | null = null) =>
  at.bench.ask('saveLabelDesign', { params: params(), body: { version, details } });
const preview = (details: ReturnType<typeof design>, market: 'GB' | 'EU' | 'US' = 'GB') =>
  at.bench.get('previewLabel', { params: params(), body: { market, details } });
const saveSheet = (geometry: object = {}, more: object = {}) => {
  const details = { name: 'Stickers', geometry: { ...GEOMETRY, ...geometry }, ...more };
  return at.bench.ask('saveLabelSheet', { body: { details } });
};
async function changeProduct(part: object) {
  const product = (await at.bench.get('listProducts')).find(({ id }) => id === at.shop.product);
  if (!product) throw new Error('the bench sells it');
  const { id, version, details } = product;
  return at.bench.ask('saveProduct', { body: { id, version, details: { ...details, ...part } } });
}
const svgOf = (view: { pieces: { id: string; svg: string }[] }, id: string): string =>
  view.pieces.find((piece) => piece.id === id)?.svg ?? '';
const notesOf = (view: { notes: Note[]; pieces: { notes: Note[] }[] }) =>
  [...view.notes, ...view.pieces.flatMap(({ notes }) => notes)].map(({ problem }) => problem.code);
interface Note {
  readonly problem: { readonly code: string };
}

describe('the labels of a product', () => {
  it('are front and back as they were entered, until somebody designs them', async () => {
    const before = await at.bench.get('getLabelDesign', { params: params() });
    expect(before.version).toBe(null);
    expect(before.details.pieces.map(({ role }) => role)).toEqual(['front', 'back']);
    expect(codesOf(await save(design()))).toEqual([]);
    const after = await at.bench.get('getLabelDesign', { params: params() });
    expect(after.version).toBe(1);
    expect(after.details).toMatchObject(design());
    expect(codesOf(await save(design(), null))).toEqual(['changed-meanwhile']);
    expect(codesOf(await save(design([WHOLE]), 1))).toEqual([]);
    const desk = await at.bench.get('listLabelDesigns');
    expect(desk.find(({ productId }) => productId === at.shop.product)).toMatchObject({
      isDesigned: true,
      pieces: ['whole'],
    });
  });

  it('show batch and date on the sticker alone, with a code where one is wished for', async () => {
    const before = await countEntries(at.bench.context.storage);
    const view = await preview(design([WHOLE, { ...STICKER, code: 'in-house' }]));
    expect(view.missing).toEqual([]);
    expect(svgOf(view, 'sticker')).toContain('LOT-0000');
    expect(svgOf(view, 'whole')).not.toContain('LOT-0000');
    expect(svgOf(view, 'whole')).toContain('Linalool');
    expect(view.pieces.find(({ id }) => id === 'sticker')?.moduleMm).toBeGreaterThan(0.3);
    expect(view.pieces.map(({ id, widthMm }) => [id, widthMm])).toEqual([
      ['whole', 62],
      ['sticker', 44],
    ]);
    expect(await countEntries(at.bench.context.storage)).toBe(before);
  });

  it('say which element finds no room, how much is lacking, and what may go to a leaflet', async () => {
    const small = design([
      { ...WHOLE, surface: { shape: 'rectangle', widthMm: 40, heightMm: 22, cornerRadiusMm: 0 } },
    ]);
    const view = await preview(small);
    const notes = view.pieces.flatMap((piece) => piece.notes);
    expect(notes.map(({ problem }) => problem.code)).toContain('label-element-lacks-room');
    const lack = notes.find(({ problem }) => problem.code === 'label-element-lacks-room');
    expect(Number(lack?.problem.parameters?.lackMm)).toBeGreaterThan(0);
    expect(lack).toMatchObject({ isStop: true, movesToLeaflet: 'ingredients' });
    expect(view.missing.map(({ code }) => code)).toContain('label-does-not-fit');
    const surface = { shape: 'rectangle' as const, widthMm: 74, heightMm: 105, cornerRadiusMm: 0 };
    const leaflet = { moves: 'both' as const, pointer: 'symbol' as const, surface };
    const moved = await preview({ ...design(), leaflet } as ReturnType<typeof design>);
    expect(svgOf(moved, 'leaflet')).toContain('Linalool');
    expect(svgOf(moved, 'whole')).not.toContain('Linalool');
  });

  it('name what lacks in a language of the label, and carry it once it is written', async () => {
    const german = design([WHOLE, STICKER], { languages: ['en', 'de'] });
    await changeProduct({ functionText: 'Body butter', precautions: 'Keep out of eyes.' });
    const lacking = await preview(german);
    expect(notesOf(lacking)).toContain('label-language-missing');
    expect(svgOf(lacking, 'whole')).toContain('…');
    await changeProduct({
      texts: { de: { name: '', functionText: 'Körperbutter', precautions: 'Nicht in die Augen.' } },
    });
    const complete = await preview(german);
    expect(notesOf(complete)).not.toContain('label-language-missing');
    expect(svgOf(complete, 'whole')).toContain('Körperbutter');
    expect(svgOf(complete, 'sticker')).toContain('Mindestens haltbar bis');
  });

  it('carry what is chosen for each, in letters of the height that is chosen', async () => {
    const back: Piece = {
      id: 'back',
      role: 'back',
      surface: { shape: 'rectangle', widthMm: 150, heightMm: 100, cornerRadiusMm: 0 },
    };
    const front: Piece = {
      ...back,
      id: 'front',
      role: 'front',
      elements: ['name', 'function', 'content', 'batch'],
    };
    const rest = ['ingredients', 'precautions', 'durability', 'opened', 'responsible'] as const;
    const chosen = [front, { ...back, elements: [...rest], letters: { leastMm: 2, mostMm: 2.5 } }];
    const view = await preview(design(chosen));
    expect(notesOf(view)).toEqual([]);
    expect(svgOf(view, 'front')).toContain('LOT-0000');
    expect(svgOf(view, 'back')).not.toContain('LOT-0000');
    expect(view.pieces.find(({ id }) => id === 'back')?.smallestXHeightMm).toBeCloseTo(2.5, 1);
    expect(notesOf(await preview(design([front, { ...back, elements: ['ingredients'] }])))).toContain(
      'label-element-nowhere',
    );
    const letters = { leastMm: 2.5, mostMm: 2 };
    expect(
      notesOf(
        await preview(
          design([
            { ...front, elements: null },
            { ...back, letters },
          ]),
        ),
      ),
    ).toContain('label-letters-crossed');
    const tiny = { leastMm: 0.8, mostMm: null };
    expect(
      notesOf(
        await preview(
          design([
            { ...front, elements: null },
            { ...back, letters: tiny },
          ]),
        ),
      ),
    ).toEqual(['label-letters-wrong']);
  });

  it('say before printing which of them is larger than the labels of its sheet, and may lie turned', async () => {
    const { id: sheetId } = must(await saveSheet());
    const wide = { ...STICKER, sheetId };
    expect(notesOf(await preview(design([WHOLE, wide])))).toEqual([]);
    const turned: Piece = {
      ...wide,
      surface: { shape: 'rectangle', widthMm: 24, heightMm: 50, cornerRadiusMm: 0 },
    };
    expect(notesOf(await preview(design([WHOLE, turned])))).toEqual([]);
    const view = await preview(design([{ ...WHOLE, sheetId }, STICKER]));
    expect(notesOf(view)).toEqual(['label-larger-than-sheet']);
    expect(view.missing).toEqual([]);
  });

  it('are asked for the estimated sign only where it is a choice', async () => {
    const asked = async () => (await at.bench.get('getLabelDesign', { params: params() })).eMark;
    expect(await asked()).toMatchObject({ isChoice: false, says: { code: 'label-e-mark-not-average' } });
    await changeProduct({ fillBasis: 'average' });
    expect(await asked()).toMatchObject({ isChoice: true });
    // Directive 76/211/EEC, Article 1: from 5 g to 10 kg, both included.
    await changeProduct({ declaredGrams: '5' });
    expect(await asked()).toMatchObject({ isChoice: true });
    await changeProduct({ declaredGrams: '4.99' });
    expect(await asked()).toMatchObject({ isChoice: false, says: { code: 'label-e-mark-outside' } });
  });

  it('name the elements as the print room has them', () => {
    expect(labels.printedElement.options).toEqual(LABEL_ELEMENTS);
  });

  it('want number and address for a code that leads to the maker’s own site', async () => {
    // A link of some sixty characters has more squares than a small sticker has room for.
    const surface = { shape: 'rectangle' as const, widthMm: 60, heightMm: 30, cornerRadiusMm: 0 };
    const linked = design([WHOLE, { ...STICKER, surface, code: 'digital-link' }]);
    const none = await preview(linked);
    expect(notesOf(none)).toEqual(['label-gtin-missing', 'label-domain-missing']);
    expect(svgOf(none, 'sticker')).toContain('LOT-0000');
    expect(codesOf(await changeProduct({ gtin: '5012345678901' }))).toEqual(['gtin-check-digit-wrong']);
    // GS1 General Specifications: 5012345678900 is the example number of GS1 UK.
    expect(codesOf(await changeProduct({ gtin: '5012345678900' }))).toEqual([]);
    const { version, details } = await at.bench.get('getWorkshop');
    if (!details) throw new Error('the workshop has begun');
    await at.bench.get('changeWorkshop', {
      body: { version, details: { ...details, codeDomain: 'bench.example' } },
    });
    expect(notesOf(await preview(linked))).toEqual([]);
  });

  it('take a picture of the maker’s own, and no other file', async () => {
    const attach = (base64: string, name = 'lid.png') =>
      at.bench.ask('attachLabelArtwork', { params: params(), body: { name, base64 } });
    const text = Buffer.from('not a picture').toString('base64');
    expect(codesOf(await attach(text, 'lid.txt'))).toEqual(['artwork-not-picture']);
    const large = Buffer.alloc(8_000_001, 0xff).toString('base64');
    expect(codesOf(await attach(large, 'lid.jpg'))).toEqual(['artwork-too-large']);
    const png = buildPng(20, 20, true);
    const garbled = Buffer.from(png.map((byte, at) => (at > 45 && at < png.length - 20 ? 7 : byte)));
    expect(codesOf(await attach(garbled.toString('base64')))).toEqual(['artwork-not-picture']);
    // One red dot.
    const dot =
      'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
    const { id } = must(await attach(dot));
    const artwork = { attachmentId: id, use: 'whole-face' as const, bleedMm: 2 };
    const front: Piece = { id: 'front', role: 'front', surface: WHOLE.surface, artwork };
    const back: Piece = { id: 'back', role: 'back', surface: WHOLE.surface };
    const view = await preview(design([front, back]));
    expect(svgOf(view, 'front')).toContain('data:image/png;base64');
    expect(svgOf(view, 'front')).not.toContain('<text');
    expect(view.pieces[0]?.notes.map(({ problem, isStop }) => [problem.code, isStop])).toContainEqual([
      'artwork-words-not-measured',
      false,
    ]);
    expect(
      codesOf(await save(design([{ ...front, artwork: { ...artwork, attachmentId: 'none' } }, back]))),
    ).toEqual(['thing-not-found']);
  });
});

describe('a sheet of labels', () => {
  it('is kept as it was measured, and refused where labels overlap or lie off the page', async () => {
    const { id } = must(await saveSheet());
    expect((await at.bench.get('listLabelSheets')).map((sheet) => sheet.details.geometry)).toEqual([
      GEOMETRY,
    ]);
    const overlap = await saveSheet({ pitchDownMm: 20 });
    expect(overlap).toMatchObject({
      problems: [{ code: 'sheet-labels-overlap', where: 'details.geometry.pitchDownMm' }],
    });
    expect(codesOf(await saveSheet({ leftMm: 60 }))).toEqual(['sheet-beyond-page']);
    const details = { name: 'Stickers', geometry: GEOMETRY };
    const stale = await at.bench.ask('saveLabelSheet', { body: { id, version: 9, details } });
    expect(codesOf(stale)).toEqual(['changed-meanwhile']);
  });

  it('has its outlines printed where they were measured, moved by what the printer is off', async () => {
    const sheet = must(await saveSheet({}, { offsetMm: { across: 1, down: -2 } }));
    const { bytes } = await at.bench.get('getSheetTrialPdf', { params: { id: sheet.id } });
    const page = renderPage(bytes, 200);
    const edge = inkColumns(page, { left: 5, top: 25, right: 30, bottom: 26 });
    // From the page's left edge to the first label, and 1 mm to the right; a pixel is 0.13 mm.
    expect((edge[0] ?? 0) / page.pixelsPerMm).toBeCloseTo(16, 0);
    const top = inkRows(page, { left: 30, top: 5, right: 31, bottom: 30 });
    expect((top[0] ?? 0) / page.pixelsPerMm).toBeCloseTo(18, 0);
  });
});

describe('labels of a run', () => {
  const print = (id: string, more: object = {}) =>
    at.bench.ask('printRunLabels', { params: { id }, body: { market: 'GB', ...more } });
  const pdf = (id: string) => at.bench.ask('getLabelPrintPdf', { params: { id } });

  it('go on a begun sheet from the position that is free, moved by the printer’s offset, and stay so', async () => {
    const sheet = must(await saveSheet({}, { offsetMm: { across: 1, down: 2 } }));
    expect(codesOf(await save(design()))).toEqual([]);
    const run = await at.startRun((await at.makeBowl()).id);
    const wish = { pieces: ['sticker'], sheetId: sheet.id, firstPosition: 5, copies: 2 };
    expect(codesOf(await print(run.id, { ...wish, firstPosition: 25 }))).toEqual(['first-position-wrong']);
    expect(codesOf(await print(run.id, { ...wish, pieces: ['lid'] }))).toEqual(['label-piece-unknown']);
    expect(codesOf(await print(run.id, { ...wish, pieces: ['whole'] }))).toEqual(['piece-larger-than-label']);
    const { id } = must(await print(run.id, wish));
    const { bytes } = must(await pdf(id));
    const page = renderPage(bytes, 100);
    const inkAt = (position: number) => {
      const left = 15 + ((position - 1) % 3) * 60 + 1;
      const top = 20 + Math.floor((position - 1) / 3) * 32 + 2;
      return inkRows(page, { left, top, right: left + 50, bottom: top + 24 });
    };
    const printed = Array.from({ length: 24 }, (_, index) => index + 1).filter(
      (position) => inkAt(position).length > 0,
    );
    expect(printed).toEqual([5, 6]);
    expect(extentMm(inkAt(5), page)).toBeLessThan(18);
    // The next print goes on where this one ended; the last position of a sheet is followed by the first of the next.
    const [{ version = 0, nextPosition } = {}] = await at.bench.get('listLabelSheets');
    expect(nextPosition).toBe(7);
    must(await print(run.id, { ...wish, firstPosition: 23 }));
    expect((await at.bench.get('listLabelSheets'))[0]?.nextPosition).toBe(1);
    // The sheet is measured anew: what was printed stays as it was.
    const details = { name: 'Stickers', geometry: { ...GEOMETRY, topMm: 15 } };
    await at.bench.get('saveLabelSheet', { body: { id: sheet.id, version, details } });
    expect(must(await pdf(id)).bytes).toEqual(bytes);
    expect(codesOf(await save(design([WHOLE]), 1))).toEqual([]);
    expect(codesOf(await pdf(id))).toEqual(['label-changed-since']);
  });

  it('that were printed before there were designs are drawn again as front and back', async () => {
    const run = await at.startRun((await at.makeBowl()).id);
    const { id } = must(await print(run.id));
    const { bytes } = must(await pdf(id));
    const { db } = at.bench.context.storage;
    const row = await db.selectFrom('label_print').selectAll().executeTakeFirstOrThrow();
    const entry = await db.selectFrom('entry').selectAll().orderBy('seq', 'desc').executeTakeFirstOrThrow();
    expect(JSON.parse(row.design ?? '')).toMatchObject({ sheet: null, firstPosition: 1 });
    await db
      .insertInto('entry')
      .values({ ...entry, seq: entry.seq + 1, id: 'older-print' })
      .execute();
    await db
      .insertInto('label_print')
      .values({ ...row, entry_id: 'older-print', design: null })
      .execute();
    expect(must(await pdf('older-print')).bytes).toEqual(bytes);
  });

  it('add up: printed less those on tins and the spoilt are left over', async () => {
    const counts = (id: string) => at.bench.get('getLabelCounts', { params: { id } });
    const ask = (id: string, used: number, spoilt: number, remark = '') =>
      at.bench.ask('countLabels', { params: { id }, body: { pieceId: 'whole', used, spoilt, remark } });
    const count = async (id: string, used: number, spoilt: number) =>
      must(await ask(id, used, spoilt, 'Counted twice.'));
    const saysOf = (view: Awaited<ReturnType<typeof counts>>) =>
      view.rows.find(({ pieceId }) => pieceId === 'whole')?.says;
    expect(codesOf(await save(design()))).toEqual([]);
    const run = await at.startRun((await at.makeBowl()).id);
    expect((await counts(run.id)).says.code).toBe('labels-all-none');
    await print(run.id, { pieces: ['whole'], copies: 7 });
    await print(run.id, { copies: 1 });
    expect(saysOf(await counts(run.id))?.code).toBe('labels-run-open');
    await at.fillAll(run.id, ...FIVE);
    await at.closeRun(run.id);
    const open = await counts(run.id);
    expect(open.rows.map(({ pieceId, printed, used, left }) => [pieceId, printed, used, left])).toEqual([
      ['whole', 8, 5, 3],
      ['sticker', 1, 5, -4],
    ]);
    expect(saysOf(open)?.code).toBe('labels-uncounted');
    expect(open.says.code).toBe('labels-all-uncounted');
    expect(open.prints.map(({ copies, pieces }) => [copies, pieces])).toEqual([
      [1, ['whole', 'sticker']],
      [7, ['whole']],
    ]);
    // More than were printed, fewer or more than there are tins: each asks for a word; what adds up asks for none.
    const before = await countEntries(at.bench.context.storage);
    for (const [used, spoilt] of [
      [5, 4],
      [4, 1],
      [6, 1],
    ] as const)
      expect(codesOf(await ask(run.id, used, spoilt, ' '))).toEqual(['label-count-needs-reason']);
    expect(await countEntries(at.bench.context.storage)).toBe(before);
    expect(codesOf(await ask(run.id, 5, 2))).toEqual([]);
    expect(saysOf(await count(run.id, 5, 2))).toMatchObject({
      code: 'labels-add-up',
      parameters: { left: 1 },
    });
    expect(saysOf(await count(run.id, 5, 4))).toMatchObject({
      code: 'labels-too-few',
      parameters: { lacking: 1 },
    });
    expect(saysOf(await count(run.id, 4, 1))).toMatchObject({
      code: 'labels-tins-without',
      parameters: { apart: 1 },
    });
    expect(saysOf(await count(run.id, 6, 1))).toMatchObject({
      code: 'labels-more-than-tins',
      parameters: { apart: 1 },
    });
    const wrong = { pieceId: 'lid', used: 1, spoilt: 0 };
    expect(codesOf(await at.bench.ask('countLabels', { params: { id: run.id }, body: wrong }))).toEqual([
      'label-piece-unknown',
    ]);
    expect((await at.bench.get('getRun', { params: { id: run.id } })).labelsPrinted).toBe(8);
  });
});
