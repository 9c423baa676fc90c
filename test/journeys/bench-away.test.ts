import { rmSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type AwayShop, buildAwayShop } from '../workshop/build-away-batch.ts';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };

/** A tablet at the bench: without the workshop's computer, and beside another tablet. */
describe('the bench while the tablet is away', () => {
  let server: RunningServer;
  let shop: AwayShop;
  let browser: Browser;
  const port = () => Number(new URL(server.address).port);

  beforeAll(async () => {
    server = await startServer();
    shop = await buildAwayShop(server);
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await server.stop();
    rmSync(server.folder, { recursive: true, force: true });
  });

  const openTablet = (personId: string, serviceWorkers: 'allow' | 'block' = 'block') =>
    openPage(browser, personId, { ...TABLET, serviceWorkers });

  it('weighs a whole batch while the server is down, through a closed tab; up again, all is there once with its own times', {
    timeout: 240_000,
  }, async () => {
    const batch = await shop.startBatch();
    const { page, context } = await openTablet(shop.person, 'allow');
    await page.goto(`${server.address}/making/${batch}`);
    await scale(page).waitFor();
    await isKeptFor(page, batch);
    await server.kill();

    const before = new Date().toISOString();
    await weigh(page, '600');
    await page.getByText('1 entry on this tablet').waitFor();
    await page.close();
    const again = await openAgain(context, `${server.address}/making`);
    await again.locator(`a[href="/making/${batch}"]`).first().tap();
    await again.getByText('Not connected: as known at').waitFor();
    // It opens where the work stands: what was weighed lies here.
    await again.getByRole('heading', { name: 'Sunflower oil' }).waitFor();
    await weigh(again, '350');
    await weigh(again, '50');
    await again.getByRole('button', { name: /^Done/ }).tap();
    await again.getByText('4 entries on this tablet, waiting for the workshop').waitFor();
    await again.getByText('4 entries of this batch are still on this tablet').waitFor();
    const after = new Date().toISOString();

    server = await startServer({ folder: server.folder, port: port() });
    await again.getByText('saved on this tablet and the workshop').waitFor({ timeout: 60_000 });
    const { screens, claims } = await server.call('getBatch', { params: { id: batch } });
    expect(claims).toEqual([]);
    expect(screens.map(({ done }) => done !== null)).toEqual([true, true, true, true]);
    const times = screens.map(({ done }) => done?.at ?? '');
    expect([...times].sort()).toEqual(times);
    expect((times[0] ?? '') >= before && (times[3] ?? '') <= after).toBe(true);
    const entries = screens.flatMap((screen) => (screen.kind === 'addition' ? screen.entries : []));
    expect(entries.map(({ actualGrams }) => actualGrams)).toEqual(['600', '350', '50']);
    await again.getByLabel('Gross').fill('995');
    await again.getByRole('button', { name: 'It is made' }).tap();
    await expect
      .poll(async () => (await server.call('getBatch', { params: { id: batch } })).state, { timeout: 20_000 })
      .toBe('made');
    await context.close();
  });

  it('sees on one tablet what is done on the other, and asks where both weighed the same while one was away', {
    timeout: 240_000,
  }, async () => {
    const batch = await shop.startBatch();
    const path = `${server.address}/making/${batch}`;
    const one = await openTablet(shop.person);
    const other = await openTablet(shop.other);
    for (const { page } of [one, other]) {
      await page.goto(path);
      await scale(page).waitFor();
    }
    await weigh(one.page, '600');
    await other.page.getByText(/Ada Quill weighed Shea butter at \d\d:\d\d/).waitFor();
    await other.page.getByRole('button', { name: 'Next step' }).tap();

    await one.page.route('**/api/**', (route) => route.abort());
    await weigh(one.page, '350');
    await one.page.getByText('1 entry on this tablet').waitFor();
    await weigh(other.page, '351');
    await expect.poll(async () => (await second(batch)).done?.actualGrams, { timeout: 20_000 }).toBe('351');
    await one.page.unroute('**/api/**');

    for (const { page } of [one, other])
      await page.getByText('1 entry from a tablet that was away asks').waitFor({ timeout: 60_000 });
    await other.page.getByRole('button', { name: 'Answer' }).tap();
    const dialog = other.page.getByRole('dialog');
    await dialog.getByLabel('Enter it as well: both were done').check();
    await dialog.getByLabel('What happened, and why').fill('Each of us poured a jug.');
    await dialog.getByRole('button', { name: 'Keep the answer' }).tap();
    await dialog.waitFor({ state: 'detached' });
    const { entries } = await second(batch);
    expect(entries.map(({ actualGrams, by }) => [actualGrams, by])).toEqual([
      ['351', 'Bo Marsh'],
      ['350', 'Ada Quill'],
    ]);
    await one.page.getByText('asks what is to become').waitFor({ state: 'detached' });
    for (const { context } of [one, other]) await context.close();
  });

  async function second(batch: string) {
    const { screens } = await server.call('getBatch', { params: { id: batch } });
    const screen = screens[1];
    if (screen?.kind !== 'addition') throw new Error('the second screen is no weighing');
    return screen;
  }
});

const scale = (page: Page) => page.getByRole('textbox', { name: 'Grams on the scale' });

async function weigh(page: Page, grams: string): Promise<void> {
  await scale(page).fill(grams);
  await page.getByRole('button', { name: /^Done:/ }).tap();
  await expect
    .poll(() =>
      scale(page)
        .inputValue()
        .catch(() => ''),
    )
    .toBe('');
}

/** The service worker has the page's files, this batch, and the list of all: from here on the page needs nobody. */
async function isKeptFor(page: Page, batch: string): Promise<void> {
  await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
  await page.reload();
  await scale(page).waitFor();
  const isKept = `Promise.all(['/api/batches', '/api/batches/${batch}'].map((path) => caches.match(path)))
    .then((kept) => !kept.includes(undefined) && navigator.serviceWorker.controller !== null)`;
  await expect.poll(() => page.evaluate(isKept), { timeout: 20_000 }).toBe(true);
}

async function openAgain(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  return page;
}
