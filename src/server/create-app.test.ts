import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildMakingBench, makeFirmBase } from '../../test/workshop/build-making.ts';
import { buildOrder, fillTins, nameWorkshop } from '../../test/workshop/build-order.ts';
import { smallPdf } from '../../test/workshop/build-product-file.ts';
import { openTestWorkshop, type TestWorkshop } from '../../test/workshop/open-test-workshop.ts';
import { type Route, routes } from '../contract/index.ts';
import { refused } from '../core/problem.ts';
import { useCases } from '../work/index.ts';
import { createApp } from './create-app.ts';

const PORT = 4716;
const HOME = `http://127.0.0.1:${PORT}`;
const folder = mkdtempSync(join(tmpdir(), 'gramwright-web-'));
const logged: string[] = [];
let bench: TestWorkshop;
let app: ReturnType<typeof createApp>;

beforeAll(async () => {
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Gramwright</title>');
  writeFileSync(join(folder, 'assets/index-a1B2c3D4.js'), 'export {};');
  writeFileSync(join(folder, 'sw.js'), '');
  bench = await openTestWorkshop();
  app = appWith(useCases);
});
afterAll(async () => {
  await bench.close();
  rmSync(folder, { recursive: true });
});

const appWith = (
  own: Parameters<typeof createApp>[0]['useCases'],
  webFolder = folder,
  context = bench.context,
) =>
  createApp({
    context,
    useCases: own,
    version: '9.9.9',
    webFolder,
    port: () => PORT,
    log: {
      warn: () => undefined,
      error: (facts, what) => logged.push(`${what} ${JSON.stringify(facts)}`),
    },
  });

interface Problems {
  readonly problems: readonly Record<string, unknown>[];
}
const send = (path: string, init: RequestInit & { headers?: Record<string, string> } = {}) =>
  Promise.resolve(
    app.request(HOME + path, { ...init, headers: { host: `127.0.0.1:${PORT}`, ...init.headers } }),
  );
const post = (path: string, body: unknown, headers: Record<string, string> = {}) =>
  send(path, {
    method: 'POST',
    body: typeof body === 'string' ? body : JSON.stringify(body),
    headers: { 'content-type': 'application/json', ...headers },
  });
const problemsOf = async (response: Response): Promise<Problems['problems']> =>
  ((await response.json()) as Problems).problems;

describe('every route of the contract', () => {
  it('is answered by somebody', () => {
    const answered = app.routes.map((it) => `${it.method} ${it.path}`);
    const missing = Object.values(routes as Record<string, Route>).filter(
      (row) => !answered.includes(`${row.method} ${row.path}`),
    );
    expect(missing.map((row) => row.path)).toEqual([]);
  });
});

describe('a request', () => {
  it('gets the answer of its use-case', async () => {
    const response = await send('/api/workshop');
    expect(response.status).toBe(200);
    expect(await response.json()).toMatchObject({ state: 'ready', details: { name: 'Test Bench' } });
  });

  it('for a paper that is not there yet is a page that can be read in a tab, and JSON for a program', async () => {
    const path = '/api/orders/gone/pick-list.pdf';
    const opened = await send(path, { headers: { accept: 'text/html,application/xhtml+xml,*/*;q=0.8' } });
    expect([opened.status, opened.headers.get('content-type')]).toEqual([404, 'text/html; charset=utf-8']);
    const page = await opened.text();
    expect(page).toContain('<h1>This paper cannot be printed yet</h1>');
    expect(page).not.toContain('"problems"');
    const odd = await send('/api/orders/%3Cb%3Egone/pick-list.pdf', { headers: { accept: 'text/html' } });
    expect(await odd.text()).not.toContain('<b>gone');
    const asked = await send(path, { headers: { accept: 'application/pdf' } });
    expect((await problemsOf(asked)).map((one) => one.code)).toEqual(['thing-not-found']);
  });

  it('that makes something is answered 201, one that changes something 200', async () => {
    const made = await post('/api/people', { stamp: bench.stamp(), name: 'Cy Fell' });
    expect(made.status).toBe(201);
    const { id } = (await made.json()) as { id: string };
    const changed = await post('/api/people', { stamp: bench.stamp(), id, version: 1, name: 'Cy Fells' });
    expect(changed.status).toBe(200);
  });

  it('sent twice with the same stamp counts once', async () => {
    const body = { stamp: bench.stamp(), name: 'Only Once' };
    const ids = [await post('/api/people', body), await post('/api/people', body)].map((it) => it.json());
    const [first, second] = (await Promise.all(ids)) as { id: string }[];
    expect(first).toEqual(second);
  });

  it('with the stamp of another is refused as a conflict, be it another body or another route', async () => {
    const stamp = bench.stamp();
    await post('/api/people', { stamp, name: 'First Said' });
    const otherBody = await post('/api/people', { stamp, name: 'Then Said' });
    expect(otherBody.status).toBe(409);
    expect((await problemsOf(otherBody))[0]).toMatchObject({
      code: 'stamp-used-otherwise',
      where: 'stamp.id',
      found: stamp.id,
      mend: expect.stringContaining('once more as a new entry'),
    });
    const otherRoute = await post('/api/places', { stamp, name: 'Loft', kind: 'shelf' });
    expect((await problemsOf(otherRoute))[0]?.code).toBe('stamp-used-otherwise');
    const { people, places } = (await (await send('/api/workshop')).json()) as {
      people: { name: string }[];
      places: { name: string }[];
    };
    expect(people.map((row) => row.name)).not.toContain('Then Said');
    expect(places.map((row) => row.name)).not.toContain('Loft');
    expect((await post('/api/people', { stamp, name: 'First Said' })).status).toBe(201);
  });

  it('with a fault is refused with where, what was found, what is allowed, and two sentences', async () => {
    const response = await post('/api/people', {
      stamp: { ...bench.stamp(), at: 'noon' },
      name: '',
      extra: 1,
    });
    expect(response.status).toBe(400);
    const problems = await problemsOf(response);
    expect(problems.map((it) => [it.code, it.where])).toEqual([
      ['format-datetime', 'stamp.at'],
      ['value-too-small', 'name'],
      ['field-unknown', 'extra'],
    ]);
    expect(problems[0]).toMatchObject({
      found: 'noon',
      says: expect.stringContaining('noon'),
      mend: expect.stringContaining('2026-11-26T08:05:00Z'),
    });
  });

  it('names the faults of path, query and body together', async () => {
    const response = await appWith({ checkRevision: async () => refused() }).request(
      `${HOME}/api/revisions/${'x'.repeat(65)}/check?markets=${'y'.repeat(30)}`,
      { headers: { host: `127.0.0.1:${PORT}` } },
    );
    expect(response.status).toBe(400);
    expect((await problemsOf(response)).map((it) => it.where)).toEqual(['id', 'markets']);
  });

  it('that is no JSON, or says that it is something else, is refused', async () => {
    expect((await problemsOf(await post('/api/people', '{'))).map((it) => it.code)).toEqual(['json-broken']);
    const form = await post('/api/people', 'name=x', { 'content-type': 'text/plain' });
    expect(form.status).toBe(415);
    expect((await problemsOf(form))[0]).toMatchObject({ code: 'body-not-json', found: 'text/plain' });
  });

  it('larger than a megabyte is refused, a report file may be larger', async () => {
    const large = JSON.stringify({ stamp: bench.stamp(), name: 'x'.repeat(1_100_000) });
    const refusal = await post('/api/people', large);
    expect(refusal.status).toBe(413);
    expect((await problemsOf(refusal))[0]).toMatchObject({ code: 'body-too-large', allowed: 1 });
    const report = await appWith({ attachReportFile: async () => refused() }).request(
      `${HOME}/api/reports/r1/file`,
      {
        method: 'POST',
        body: large,
        headers: { host: `127.0.0.1:${PORT}`, 'content-type': 'application/json' },
      },
    );
    expect((await problemsOf(report)).map((it) => it.code)).toContain('field-missing');
  });

  it('whose stated length is too large is refused before it is read', async () => {
    const asked = (length: number) =>
      post('/api/people', { stamp: bench.stamp(), name: 'Ada' }, { 'content-length': String(length) });
    expect((await asked(1024 * 1024 + 1)).status).toBe(413);
    expect((await asked(1024 * 1024)).status).toBe(201);
  });

  it('with an unknown path below /api is refused as a problem', async () => {
    for (const path of ['/api', '/api/', '/api/nothing']) {
      const response = await send(path);
      expect(response.status, path).toBe(404);
    }
    const response = await send('/api/workshop', { method: 'DELETE' });
    expect(response.status).toBe(404);
    expect((await problemsOf(response))[0]).toMatchObject({ code: 'route-unknown', found: 'DELETE' });
  });
});

describe('a refusal', () => {
  it.each([
    ['thing-not-found', 404],
    ['changed-meanwhile', 409],
    ['disk-full', 507],
    ['lot-overdrawn', 422],
  ])('%s is answered %i', async (code, status) => {
    const refusing = appWith({
      getWorkshop: async () => refused({ code, where: 'x', found: 1, allowed: 2 }),
    });
    const response = await refusing.request(`${HOME}/api/workshop`, {
      headers: { host: `127.0.0.1:${PORT}` },
    });
    expect(response.status).toBe(status);
  });

  it('of an edit with an old version is a 409 that shows what stands there', async () => {
    const { id } = (await (await post('/api/people', { stamp: bench.stamp(), name: 'Dee Holt' })).json()) as {
      id: string;
    };
    await post('/api/people', { stamp: bench.stamp(), id, version: 1, name: 'Dee Hold' });
    const late = await post('/api/people', { stamp: bench.stamp(), id, version: 1, name: 'Dee Hole' });
    expect(late.status).toBe(409);
    expect((await problemsOf(late))[0]).toMatchObject({
      code: 'changed-meanwhile',
      found: 1,
      allowed: 2,
      says: expect.stringContaining('Dee Hold'),
    });
  });
});

describe('a moment in a sentence', () => {
  it('is told by the workshop’s clock', async () => {
    const { version, details } = (await (await send('/api/workshop')).json()) as {
      version: number;
      details: Record<string, unknown>;
    };
    const moveTo = (timeZone: string, seen: number) =>
      send('/api/workshop', {
        method: 'PUT',
        body: JSON.stringify({ stamp: bench.stamp(), version: seen, details: { ...details, timeZone } }),
        headers: { 'content-type': 'application/json' },
      });
    expect((await moveTo('America/New_York', version)).status).toBe(200);
    const late = { ...bench.stamp(), at: '2026-11-26T09:05:00Z' };
    const [refusal] = await problemsOf(await post('/api/people', { stamp: late, name: 'x' }));
    // New York is five hours behind in winter.
    expect(refusal?.says).toContain('Thursday 26 November, 04:05');
    expect(refusal?.says).toContain('Thursday 26 November, 03:05');
    await moveTo('Europe/London', version + 1);
    const [again] = await problemsOf(await post('/api/people', { stamp: late, name: 'x' }));
    expect(again?.says).toContain('Thursday 26 November, 09:05');
  });
});

describe('a mistake of ours', () => {
  it('is logged with its cause and said calmly, without the cause', async () => {
    const broken = appWith({
      getWorkshop: () => {
        throw new Error('secret inside');
      },
    });
    const response = await broken.request(`${HOME}/api/workshop`, { headers: { host: `127.0.0.1:${PORT}` } });
    expect(response.status).toBe(500);
    const text = await response.text();
    expect(text).toContain('our-mistake');
    expect(text).not.toContain('secret');
    expect(logged.at(-1)).toContain('our-mistake');
  });
});

describe('a route that is only read', () => {
  // A picture or a link on another site sends a GET without an Origin.
  it('takes no body and no stamp, so that a link on another site starts nothing', () => {
    const reading = Object.entries(routes as Record<string, Route>).filter(([, row]) => row.method === 'GET');
    expect(reading.length).toBeGreaterThan(20);
    expect(reading.filter(([, row]) => row.input !== undefined)).toEqual([]);
  });

  it('leaves the file as it was, be its paper a label, a list or a copy of everything', async () => {
    const shop = await openTestWorkshop();
    const ids = await fillWorkshop(shop);
    const full = appWith(useCases, folder, shop.context);
    const entries = () => shop.context.storage.handle.prepare('select count(*) as n from entry').get();
    const before = entries();
    const refused = await askAll(full, ids);
    expect(entries()).toEqual(before);
    await shop.close();
    expect(refused).toEqual(NOTHING_TO_READ);
  }, 120_000);

  it('answers of products that were written down before some of their fields were asked for', async () => {
    const shop = await openTestWorkshop();
    const ids = await fillWorkshop(shop);
    const { handle } = shop.context.storage;
    const later = ['saleCountries', 'scentOnLabel', 'noOpenedPeriod', 'texts', 'gtin'];
    const paths = later.map((field) => `'$.${field}'`).join(', ');
    handle.exec(`update product set details = json_remove(details, ${paths})`);
    const rows = handle.prepare('select details from product').all() as { details: string }[];
    expect(rows.length).toBeGreaterThan(0);
    for (const { details } of rows)
      expect(Object.keys(JSON.parse(details)).filter((key) => later.includes(key))).toEqual([]);
    const refused = await askAll(appWith(useCases, folder, shop.context), ids);
    await shop.close();
    expect(refused).toEqual(NOTHING_TO_READ);
  }, 120_000);
});

/** No paper was attached to the report, there is nothing to ask a supplier, and no network was ever on. Everything else is really answered. */
const NOTHING_TO_READ = [
  '/api/revisions/:id/letter.pdf 422',
  '/api/materials/:id/letter.pdf 422',
  '/api/reports/:id/file 422',
  '/api/reach/authority.crt 422',
];

/** Every route that is only read, and what of them was not answered. */
async function askAll(app: ReturnType<typeof appWith>, ids: Readonly<Record<string, string>>) {
  const refused: string[] = [];
  for (const { method, path } of Object.values(routes as Record<string, Route>)) {
    if (method !== 'GET') continue;
    const [, thing = ''] = /^\/api\/([a-z-]+)/.exec(path) ?? [];
    const asked = path.replace(':id', ids[thing] ?? '').replace(':name', 'no-such-name');
    const headers = { host: `127.0.0.1:${PORT}` };
    const response = await app.request(`${HOME}${asked}${QUERIES[path]?.(ids) ?? ''}`, { headers });
    await response.arrayBuffer();
    if (response.status !== 200) refused.push(`${path} ${response.status}`);
  }
  return refused;
}

const QUERIES: Readonly<Record<string, (ids: Readonly<Record<string, string>>) => string>> = {
  '/api/filling-runs/:id/label': () => '?market=GB',
  '/api/material-suggestions': () => '?like=shea',
  '/api/batches/:id/aim': ({ products, scales }) => `?productId=${products}&scaleId=${scales}`,
};

/** A workshop in which there is one of each thing that a route reads; answers their ids by the word in the path. */
async function fillWorkshop(shop: TestWorkshop): Promise<Readonly<Record<string, string>>> {
  const made = await buildMakingBench(shop);
  await shop.get('saveLotCertificate', {
    params: { id: made.lots.shea },
    body: {
      reference: 'Certificate 1',
      datedOn: null,
      details: { constituents: [], isComplete: true },
      file: { name: 'certificate.pdf', base64: smallPdf('certificate') },
    },
  });
  const { certificates } = await shop.get('listLotCertificates', { params: { id: made.lots.shea } });
  await nameWorkshop(shop);
  await makeFirmBase(shop, made, '400');
  const { run, lot } = await fillTins(shop, made, 5);
  const { batchId } = await shop.get('getRun', { params: { id: run } });
  const print = await shop.get('printRunLabels', { params: { id: run }, body: { market: 'GB', copies: 1 } });
  await shop.get('releaseRun', { params: { id: run }, body: { verdict: 'released', reason: '' } });
  const order = await buildOrder(shop, made.product, 2);
  await shop.get('reserveOrder', { params: { id: order } });
  const [report] = await shop.get('listReports');
  const complaint = await shop.get('enterComplaint', {
    body: {
      productId: made.product,
      runId: run,
      receivedOn: '2026-11-26',
      details: { kind: 'smell-or-look', said: 'It smells of nothing.', effect: 'none' },
    },
  });
  const file = await shop.get('fileUnderHeading', {
    params: { id: made.product },
    body: { heading: 'claims', name: 'Study.pdf', base64: smallPdf('study') },
  });
  const label = { shape: 'round' as const, diameterMm: 50 };
  const grid = { columns: 1, rows: 1, leftMm: 10, topMm: 10, pitchAcrossMm: 0, pitchDownMm: 0 };
  const geometry = { pageWidthMm: 210, pageHeightMm: 297, ...grid, label };
  const sheet = await shop.get('saveLabelSheet', { body: { details: { name: 'Round', geometry } } });
  return {
    'label-sheets': sheet.id,
    scales: made.scales.bench,
    'lot-certificates': certificates[0]?.id ?? '',
    attachments: file.id,
    complaints: complaint.id,
    products: made.product,
    'filling-runs': run,
    'label-prints': print.id,
    formulas: made.mixture,
    revisions: made.mixtureRevision,
    reports: report?.id ?? '',
    batches: batchId,
    orders: order,
    materials: made.materials.shea,
    lots: lot,
  };
}

describe('who may ask', () => {
  it.each(['127.0.0.1', 'localhost', '[::1]'])('asks for %s with the port', async (name) => {
    const host = `${name}:${PORT}`;
    expect((await send('/api/health', { headers: { host } })).status).toBe(200);
    expect((await send('/api/health', { headers: { host, origin: `http://${host}` } })).status).toBe(200);
  });

  it.each([
    'evil.example',
    `evil.example:${PORT}`,
    '127.0.0.1',
    '127.0.0.1:1',
    '',
    `127.0.0.1:${PORT}.evil.example`,
  ])('is refused where it asked for "%s"', async (host) => {
    for (const path of ['/api/health', '/']) {
      const response = await send(path, { headers: { host } });
      expect(response.status).toBe(403);
      expect((await problemsOf(response))[0]).toMatchObject({ code: 'host-foreign', found: host });
    }
  });

  it.each(['http://evil.example', 'null', `http://localhost:${PORT}`, `https://127.0.0.1:${PORT}`])(
    'is refused where the page asking is of "%s"',
    async (origin) => {
      const response = await post('/api/people', { stamp: bench.stamp(), name: 'x' }, { origin });
      expect(response.status).toBe(403);
      expect((await problemsOf(response))[0]).toMatchObject({ code: 'origin-foreign', found: origin });
    },
  );
});

describe('every answer', () => {
  it.each(['/', '/api/health', '/api/nothing', '/assets/index-a1B2c3D4.js'])(
    'has its guards: %s',
    async (path) => {
      const { headers } = await send(path);
      const policy = headers.get('content-security-policy') ?? '';
      expect(policy).toContain("default-src 'self'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/unsafe|https?:|\*/);
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
    },
  );
});

describe('the pages', () => {
  it('are served with their types; what has a hash in its name is kept for ever', async () => {
    const script = await send('/assets/index-a1B2c3D4.js');
    expect(script.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
    expect(script.headers.get('cache-control')).toContain('immutable');
    for (const path of ['/', '/sw.js'])
      expect((await send(path)).headers.get('cache-control')).toBe('no-cache');
  });

  it('find their own way: any path of no file is the application', async () => {
    for (const path of ['/', '/orders/103', '/making/b1/screens']) {
      const response = await send(path);
      expect(response.headers.get('content-type')).toContain('text/html');
      expect(await response.text()).toContain('Gramwright');
    }
  });

  it('never lead out of their folder', async () => {
    for (const path of [
      '/../package.json',
      '/%2e%2e/package.json',
      '/assets/..%2f..%2fpackage.json',
      '/nothing.js',
    ]) {
      expect((await send(path)).status, path).toBe(404);
    }
  });

  it('that are not built say so', async () => {
    const bare = appWith(useCases, join(folder, 'not-there'));
    const response = await bare.request(`${HOME}/`, { headers: { host: `127.0.0.1:${PORT}` } });
    expect(await response.text()).toContain('npm run build');
  });
});

describe('calculations and health', () => {
  it('answer without a workshop begun', async () => {
    expect(await (await send('/api/health')).json()).toEqual({
      version: '9.9.9',
      schema: bench.context.storage.schemaVersion,
    });
    const list = (await (await send('/api/calc')).json()) as { name: string; sources: unknown[] }[];
    expect(list.map((it) => it.name)).toContain('tolerable-error');
    expect(list.every((it) => it.sources.length > 0)).toBe(true);
  });

  it('compute, refuse bad input, and know no other names', async () => {
    // Directive 76/211/EEC, Annex I, 2.4: 50 to 100 g have a tolerable negative error of 4.5 g.
    const good = await post('/api/calc/tolerable-error', { nominal: 60, unit: 'g' });
    expect(await good.json()).toMatchObject({ tolerableError: 4.5, limit1: 55.5, limit2: 51 });
    expect((await post('/api/calc/tolerable-error', { nominal: -1, unit: 'g' })).status).toBe(400);
    const unknown = await post('/api/calc/tolerable-eror', {});
    expect(unknown.status).toBe(404);
    expect((await problemsOf(unknown))[0]?.allowed).toContain('tolerable-error');
  });
});

describe('files', () => {
  it('come with their type and a name', async () => {
    const zip = await send('/api/export.zip');
    expect(zip.headers.get('content-type')).toBe('application/zip');
    expect(zip.headers.get('content-disposition')).toContain('filename="gramwright-export-2026-11-26.zip"');
    const head = Buffer.from(await zip.arrayBuffer()).subarray(0, 4);
    expect(head.toString('hex'), 'the mark of a zip file').toBe('504b0304');
  });

  it('of everything as JSON hold the people', async () => {
    const all = (await (await send('/api/export.json')).json()) as { tables: { person: { name: string }[] } };
    expect(all.tables.person.map((row) => row.name)).toContain('Ada Quill');
  });

  it('come with a check-up that finds nothing wrong', async () => {
    expect(await (await send('/api/check-up')).json()).toMatchObject({ isSound: true });
  });
});
