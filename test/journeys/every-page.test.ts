import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** Every page of the example workshop in a real browser: no axe violation (WCAG 2.2 A and AA), nothing wider than the screen. */
const SIZES = {
  phone: { width: 375, height: 812 },
  tablet: { width: 820, height: 1180 },
  desk: { width: 1280, height: 900 },
};
/** Orders that look different. */
const DIFFERENT = ['yes', 'sent', 'cancelled', 'part-sent'];
/** Windows at work side by side: axe keeps one processor busy for each. */
const LANES = 2;
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe('every page', () => {
  let server: RunningServer;
  let browser: Browser;
  let person = '';
  let paths: string[] = [];

  beforeAll(async () => {
    server = await startServer({ args: ['--example'] });
    browser = await openBrowser();
    person = (await server.call('getWorkshop')).people[0]?.id ?? '';
    paths = await everyPath(server);
  });
  afterAll(async () => {
    await browser.close();
    await server.stop();
  });

  it('has no axe violation and nothing wider than the screen, from phone to desk', async () => {
    const lanes = Array.from({ length: LANES }, (_, lane) =>
      paths.filter((_path, at) => at % LANES === lane),
    );
    const wrong = await Promise.all(lanes.map(lookAt));
    expect(wrong.flat()).toEqual([]);
  }, 900_000);

  /** One page after the other in a window of its own; what is wrong with them. */
  async function lookAt(lane: readonly string[]): Promise<string[]> {
    const { page, context, errors } = await openPage(browser, person, { viewport: SIZES.desk });
    const wrong: string[] = [];
    for (const [index, path] of lane.entries()) {
      await page.setViewportSize(SIZES.desk);
      await page.goto(server.address + path, { waitUntil: 'domcontentloaded' });
      await page.locator('h1').first().waitFor();
      await page.locator('[data-loading]').waitFor({ state: 'detached' });
      for (const viewport of [SIZES.tablet, SIZES.phone]) {
        await page.setViewportSize(viewport);
        const width = Number(await page.evaluate('document.documentElement.scrollWidth'));
        if (width > viewport.width) wrong.push(`${path}: ${width} px wide on a screen of ${viewport.width}`);
      }
      // axe looks at each page once, in turn as a phone and as a desk shows it: it is by far the slowest part.
      if (index % 2 === 0) await page.setViewportSize(SIZES.desk);
      wrong.push(...(await violationsOf(page, path)));
    }
    await context.close();
    return [...wrong, ...errors.filter((error) => !error.includes('404'))];
  }
});

async function violationsOf(page: Page, where: string): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze();
  return violations.map(
    (found) => `${where}: ${found.id}: ${found.nodes.map((node) => node.html.slice(0, 120)).join(' | ')}`,
  );
}

async function everyPath(server: RunningServer): Promise<string[]> {
  const orders = await server.call('listOrders');
  const formulas = await server.call('listFormulas');
  const batches = await server.call('listBatches');
  const runs = await server.call('listRuns');
  const shelf = await server.call('getShelf');
  const materials = await server.call('listMaterials');
  const products = await server.call('listProducts');
  const designed = (await server.call('listLabelDesigns')).find((row) => row.isDesigned)?.productId;
  const [sheet] = await server.call('listLabelSheets');
  const complaints = await server.call('listComplaints');
  const reports = await server.call('listReports');
  const mixture = formulas.find((formula) => formula.kind === 'mixture')?.id;
  const item = shelf.items[0];
  const made = batches.find((batch) => batch.state === 'made' && batch.formulaKind === 'mixture')?.id;
  const paths = [
    '/',
    '/pair',
    '/orders',
    '/orders/new',
    '/orders/customers',
    '/formulas',
    '/formulas/new',
    '/reports',
    '/products',
    '/products/new',
    '/shelf',
    '/shelf/weigh',
    '/shelf/receive',
    '/shelf/opening',
    '/materials',
    '/materials/new',
    '/making',
    '/labels',
    '/trace',
    '/workshop',
    '/nowhere',
    ...DIFFERENT.map(
      (state) =>
        `/orders/${orders.find((order) => order.promise.answer === state || order.state === state)?.id}`,
    ),
    `/orders/${orders[0]?.id}/change`,
    `/formulas/${mixture}`,
    `/formulas/${mixture}/recipe`,
    `/formulas/${mixture}/check`,
    `/formulas/${mixture}/scent`,
    `/making/new?formula=${mixture}`,
    `/making/${made}`,
    `/making/${made}/fill`,
    ...['closed', 'released'].map((state) => `/filling/${runs.find((run) => run.state === state)?.id}`),
    `/labels/${runs[0]?.id}`,
    `/labels/${runs.find((run) => run.productId === designed)?.id}`,
    `/labels/products/${designed}`,
    `/labels/sheets/${sheet?.id}`,
    '/labels/sheets/new',
    `/shelf/items/${item?.itemKind}/${item?.itemId}`,
    `/shelf/lots/${item?.lots[0]?.id}`,
    `/shelf/lots/${item?.lots[0]?.id}/weigh`,
    `/trace/${item?.lots[0]?.id}`,
    `/materials/${materials[0]?.id}`,
    `/products/${products[0]?.id}`,
    `/products/${complaints[0]?.productId}/file`,
    `/products/${complaints[0]?.productId}/file/change`,
    `/products/${complaints[0]?.productId}/notification`,
    `/formulas/${mixture}/worksheet`,
    `/reports/${reports[0]?.id}/changes`,
    '/complaints',
    '/complaints/new',
    `/complaints/${complaints[0]?.id}`,
  ];
  expect(paths.filter((path) => path.includes('undefined'))).toEqual([]);
  return paths;
}
