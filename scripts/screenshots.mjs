// Takes the pictures of the tour (docs/screenshots) on the example workshop, in a real browser.
// `node scripts/screenshots.mjs` writes the tour's; `--all FOLDER` writes every page at 375, 820 and 1280 px.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { chromium } from 'playwright-core';

const root = resolve(import.meta.dirname, '..');
const PORT = Number(process.env.GRAMWRIGHT_SCREENSHOT_PORT ?? 4713);
const address = `http://127.0.0.1:${PORT}`;
const BROWSER = process.env.CHROMIUM ?? '/usr/bin/chromium';
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const WIDTHS = { phone: [375, 812], tablet: [820, 1180], desk: [1280, 900] };

const ask = async (path) => (await fetch(address + path)).json();

async function startExample(folder) {
  const child = spawn(
    process.execPath,
    [join(root, 'bin/gramwright'), 'start', '--example', '--folder', folder, '--port', String(PORT)],
    {
      stdio: 'inherit',
    },
  );
  for (let tries = 0; tries < 600; tries += 1) {
    if (child.exitCode !== null) throw new Error('the example did not start');
    if (
      await fetch(`${address}/api/health`).then(
        (response) => response.ok,
        () => false,
      )
    )
      return child;
    await new Promise((next) => setTimeout(next, 100));
  }
  throw new Error('the example did not answer');
}

/** A batch on the bench: begun as on the page, so that there is one to be looked at. */
async function beginBatch(formula, person) {
  const { inForce, latest } = await ask(`/api/formulas/${formula.id}`);
  const stamp = { id: crypto.randomUUID(), at: new Date().toISOString(), by: person, device: 'pictures' };
  const size = { by: 'grams', grams: '400' };
  const wish = { revisionId: (inForce ?? latest).id, purpose: 'trial', markets: ['GB'], size };
  const response = await fetch(`${address}/api/batches`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: address },
    body: JSON.stringify({ stamp, wish }),
  });
  const begun = await response.json();
  if (!response.ok) throw new Error(`the batch was not begun: ${JSON.stringify(begun)}`);
  return begun.id;
}

/** Every page, with the things of the example that it is about. */
async function pages() {
  const [orders, formulas, batches, runs, shelf, workshop, reports, complaints, designs, sheets] =
    await Promise.all(
      [
        'orders',
        'formulas',
        'batches',
        'filling-runs',
        'shelf',
        'workshop',
        'reports',
        'complaints',
        'label-designs',
        'label-sheets',
      ].map((path) => ask(`/api/${path}`)),
    );
  const designed = designs.find((design) => design.isDesigned);
  const open = orders.find((order) => order.state === 'open');
  const mixture = formulas.find((formula) => formula.name === 'Orange and cedar butter');
  const closed = runs.find((run) => run.state === 'closed') ?? runs[0];
  const charted = runs.reduce((most, run) => (run.weights.length > most.weights.length ? run : most), closed);
  const base = formulas.find((formula) => formula.name === 'Plain whipping base');
  const onBench = await beginBatch(base, workshop.people[0].id);
  const oil =
    shelf.items.find((item) => item.group === 'ingredient' && item.lots.length > 1) ?? shelf.items[0];
  return {
    person: workshop.people[0].id,
    list: {
      morning: '/',
      orders: '/orders',
      'order-new': '/orders/new',
      order: `/orders/${open.id}`,
      formulas: '/formulas',
      formula: `/formulas/${mixture.id}`,
      recipe: `/formulas/${mixture.id}/recipe`,
      check: `/formulas/${mixture.id}/check`,
      scent: `/formulas/${mixture.id}/scent`,
      reports: '/reports',
      products: '/products',
      product: `/products/${complaints[0].productId}`,
      'product-new': '/products/new',
      shelf: '/shelf',
      item: `/shelf/items/${oil.itemKind}/${oil.itemId}`,
      lot: `/shelf/lots/${oil.lots[0].id}`,
      materials: '/materials',
      material: `/materials/${oil.itemId}`,
      'material-new': '/materials/new',
      making: '/making',
      plan: `/making/new?formula=${mixture.id}`,
      batch: `/making/${batches.find((batch) => batch.state === 'made').id}`,
      bench: `/making/${onBench}`,
      wandering: `/formulas/${base.id}`,
      pair: '/pair',
      filling: `/filling/${closed.id}`,
      chart: `/filling/${charted.id}`,
      labels: '/labels',
      label: `/labels/${closed.id}`,
      'label-designed': `/labels/${runs.find((run) => run.productId === designed.productId).id}`,
      'label-design': `/labels/products/${designed.productId}`,
      'label-sheet': `/labels/sheets/${sheets[0].id}`,
      'label-sheet-new': '/labels/sheets/new',
      'product-file': `/products/${complaints[0].productId}/file`,
      'product-file-change': `/products/${complaints[0].productId}/file/change`,
      notification: `/products/${complaints[0].productId}/notification`,
      worksheet: `/formulas/${mixture.id}/worksheet`,
      'report-changes': `/reports/${reports[0].id}/changes`,
      complaints: '/complaints',
      'complaint-new': '/complaints/new',
      complaint: `/complaints/${complaints[0].id}`,
      trace: '/trace',
      'trace-lot': `/trace/${oil.lots[0].id}`,
      workshop: '/workshop',
    },
  };
}

async function shoot(browser, { person, list }, wanted, folder) {
  mkdirSync(folder, { recursive: true });
  for (const size of new Set(wanted.map((picture) => picture.size))) {
    const [width, height] = WIDTHS[size];
    const context = await browser.newContext({
      viewport: { width, height },
      deviceScaleFactor: size === 'phone' ? 2 : 1,
    });
    await context.addInitScript((id) => localStorage.setItem('gramwright.person', id), person);
    const page = await context.newPage();
    for (const { name, file = `${name}-${size}` } of wanted.filter((picture) => picture.size === size)) {
      await page.goto(address + list[name], { waitUntil: 'load' });
      await page.locator('h1').first().waitFor();
      await page.locator('[data-loading]').waitFor({ state: 'detached' });
      await page.evaluate(() => document.fonts.ready);
      await page.screenshot({ path: join(folder, `${file}.png`), fullPage: true });
      console.log(`${file}.png`);
    }
    await context.close();
  }
}

const TOUR = [
  { name: 'morning', size: 'desk' },
  { name: 'morning', size: 'phone' },
  { name: 'order', size: 'desk' },
  { name: 'check', size: 'desk' },
  { name: 'shelf', size: 'desk' },
  { name: 'bench', size: 'tablet' },
  { name: 'filling', size: 'tablet' },
  { name: 'chart', size: 'desk' },
  { name: 'label', size: 'desk' },
  { name: 'trace-lot', size: 'desk' },
];

const folder = mkdtempSync(join(tmpdir(), 'gramwright-pictures-'));
const child = await startExample(folder);
const browser = await chromium.launch({ executablePath: BROWSER, args: FLAGS });
try {
  const known = await pages();
  const all = process.argv.indexOf('--all');
  const only = process.argv.indexOf('--only');
  const names = only === -1 ? Object.keys(known.list) : process.argv[only + 1].split(',');
  const wanted =
    all === -1 ? TOUR : names.flatMap((name) => Object.keys(WIDTHS).map((size) => ({ name, size })));
  await shoot(browser, known, wanted, all === -1 ? join(root, 'docs/screenshots') : process.argv[all + 1]);
} finally {
  await browser.close();
  child.kill('SIGTERM');
  rmSync(folder, { recursive: true, force: true });
}
