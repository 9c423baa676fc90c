import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { buildOwnWorkshop, type OwnWorkshop } from '../workshop/own-workshop.ts';
import { keyboardOf, type PageHands, thumb } from '../workshop/page-hands.ts';
import { inDays, stampBy } from '../workshop/stamp.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** From the order to the trace on the pages: once with a thumb on a tablet, once with the keyboard alone. */
describe('the job on the pages', () => {
  let server: RunningServer;
  let browser: Browser;
  let shop: OwnWorkshop;

  beforeAll(async () => {
    server = await startServer();
    shop = await buildOwnWorkshop(server);
    await stockUp(server, shop);
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await server.stop();
  });

  it('is done by touch at 820 x 1180', async () => {
    const { page, context, errors } = await openPage(browser, shop.person, {
      viewport: { width: 820, height: 1180 },
      hasTouch: true,
    });
    await doTheJob(server.address, page, thumb, 'touch');
    // The weight that is asked about is asked about before it is sent: nothing was refused.
    expect(errors).toEqual([]);
    await context.close();
  });

  it('is done by keyboard alone at 1280 x 900', async () => {
    const { page, context, errors } = await openPage(browser, shop.person, {
      viewport: { width: 1280, height: 900 },
    });
    await doTheJob(server.address, page, keyboardOf(page), 'keys');
    // The weight that is asked about is asked about before it is sent: nothing was refused.
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** Enough of everything for both; the base is made and firm. */
async function stockUp(server: RunningServer, shop: OwnWorkshop): Promise<void> {
  const stamp = () => stampBy(shop.person);
  const receive = (materialId: string, quantity: string) =>
    server.call('receiveGoods', {
      body: {
        stamp: stamp(),
        materialId,
        supplierLot: 'S-1',
        bestBefore: inDays(300),
        quantity,
        paid: '12.00',
        accept: true,
      },
    });
  const { shea, sunflower, starch, orange, tin, lid, label } = shop.materials;
  for (const [material, quantity] of [
    [shea, '1000'],
    [sunflower, '1000'],
    [starch, '200'],
    [orange, '50'],
    [tin, '40'],
    [lid, '40'],
    [label, '40'],
  ] as const) {
    await receive(material, quantity);
  }
  const base = await server.call('getFormula', { params: { id: shop.base } });
  const wish = {
    revisionId: base.latest?.id,
    purpose: 'sale',
    markets: ['GB'],
    size: { by: 'grams', grams: '800' },
  };
  const batch = await server.call('startBatch', { body: { stamp: stamp(), wish } });
  for (const screen of batch.screens) {
    if (screen.kind === 'step') {
      await server.call('recordStep', {
        params: { id: batch.id },
        body: { stamp: stamp(), position: screen.position, celsius: null, minutes: null, remark: '' },
      });
    } else {
      const { position, lotId, scaleId, targetGrams } = screen;
      await server.call('recordAddition', {
        params: { id: batch.id },
        body: { stamp: stamp(), position, lotId, scaleId, actualGrams: targetGrams },
      });
    }
  }
  const made = await server.call('finishBatch', {
    params: { id: batch.id },
    body: { stamp: stamp(), yieldGrams: '795' },
  });
  await server.call('sayFirm', {
    params: { id: made.lotId ?? '' },
    body: { stamp: stamp(), remark: 'Firm in the cold cellar.' },
  });
  const check = await server.call('checkRevision', {
    params: { id: shop.mixtureRevision },
    query: { markets: 'GB,NI' },
  });
  for (const { key } of check.open) {
    await server.call('decideUnknown', {
      params: { id: shop.mixtureRevision },
      body: { stamp: stamp(), key, verdict: 'accepted', reason: 'In the report' },
    });
  }
}

async function doTheJob(address: string, page: Page, hands: PageHands, note: string): Promise<void> {
  const button = (name: string | RegExp) => page.getByRole('button', { name });
  const link = (name: string | RegExp) => page.getByRole('link', { name });
  const field = (name: string | RegExp) => page.getByLabel(name);

  // 1. The order answers before it is entered.
  await page.goto(`${address}/orders/new`);
  await hands.choose(field('Product 1'), 'Orange whipped butter');
  await hands.type(field('How many'), '5');
  await hands.setDate(field('Wanted by'), inDays(8));
  await page
    .getByText(/can go out|Can go/i)
    .first()
    .waitFor();
  await hands.type(field(/^Note/), note);
  await hands.press(button('Enter the order'));
  await page.waitForURL(/\/orders\/[0-9a-f-]{36}$/);
  const orderAddress = page.url();

  // 3, 5. Sized from the tins, laid out for the scales.
  await page.goto(`${address}/making`);
  await hands.press(link('Start a batch').first());
  await hands.choose(field('What'), 'Orange butter');
  await hands.type(field('Tins of Orange whipped butter'), '5');
  await page.getByRole('table', { name: 'Weighing sheet' }).waitFor();
  await hands.press(button('Start the batch'));

  // 6. One step a screen.
  await page.waitForURL(/\/making\/[0-9a-f-]{36}$/);
  await page.getByText(/^Step 1 of/).waitFor();
  await weighEverything(page, hands);
  const batchId = page.url().split('/').pop();
  const answer = await page.request.get(`${address}/api/batches/${batchId}`);
  const { plannedGrams } = (await answer.json()) as { plannedGrams: string };
  await hands.type(field(/^Gross/), plannedGrams);
  await hands.press(button('It is made'));

  // 7. Tin by tin.
  await hands.press(link('Fill tins'));
  await hands.type(field(/^Tins wanted/), '5');
  await hands.type(field(/^Or one weight for all/), '11.4');
  await hands.press(button('Start filling'));
  // The bench is looked at before the first tin; how tins were cleaned is a tap; counting out can wait.
  await hands.press(button('It is clear'));
  await hands.press(button('Washed and dried'));
  await hands.press(button('Say it later'));
  // Another tin on the scale: far more than twice the label is asked about, and not kept where the question is closed.
  await hands.type(page.getByRole('textbox', { name: 'Grams on the scale' }), '120');
  await hands.press(button('Keep this tin'));
  const question = page.getByRole('dialog', { name: 'Is that right?' });
  await question.getByText(/Weigh again, or take another kind of tin/).waitFor();
  await page.keyboard.press('Escape');
  await question.waitFor({ state: 'detached' });
  for (const gross of ['46.55', '46.60', '46.52', '46.58', '46.61']) {
    await hands.type(page.getByRole('textbox', { name: 'Grams on the scale' }), gross);
    await hands.press(button('Keep this tin'));
    await page.getByRole('textbox', { name: 'Grams on the scale' }).and(page.locator('[value=""]')).waitFor();
  }
  await hands.type(field(/^Sample/), '10');
  await hands.press(button('Filling is over'));

  // 9. Released by name, kept, sent.
  await hands.press(button('Release for sale'));
  await page.getByText(/Released by Ada Quill/).waitFor();
  const runNumber = (await page.title()).replace(/^Filling (\S+).*/, '$1');
  await page.goto(orderAddress);
  await hands.press(button('Put tins aside'));
  await hands.press(button('Send it').first());
  await hands.press(page.getByRole('dialog').getByRole('button', { name: /Send/ }));
  await page.getByText('Sent. The tins are off the shelf').waitFor();

  // 10. From the tin's number to the order.
  await page.goto(`${address}/trace`);
  await hands.type(field('Number or name'), runNumber);
  await page.keyboard.press('Enter');
  await page.getByRole('table', { name: 'Orders that got it' }).waitFor();
  await page.getByRole('table', { name: 'What it was made of' }).getByText('Sweet orange oil').waitFor();
}

/** Target weight in, step after step, until the page asks what came out. */
async function weighEverything(page: Page, hands: PageHands): Promise<void> {
  for (let screen = 0; screen < 20; screen += 1) {
    const heading = page.getByRole('heading', { level: 1 });
    const before = await heading.textContent();
    if (before === 'Everything is in. What came out?') return;
    const scale = page.getByRole('textbox', { name: 'Grams on the scale' });
    if (await scale.isVisible()) {
      const target = await page
        .getByText(/^Weigh out/)
        .locator('xpath=..')
        .locator('p')
        .nth(1)
        .textContent();
      await hands.type(scale, (target ?? '').replace(/g$/, ''));
    }
    if (before === 'Whip until pale') await whipOneRound(page, hands);
    await hands.press(page.getByRole('button', { name: /(^|All is whipped. )Done:/ }));
    await heading.filter({ hasNotText: before ?? '' }).waitFor();
  }
  throw new Error('the batch has more screens than it should');
}

/** One round: stopped, looked at, and good as it is. */
async function whipOneRound(page: Page, hands: PageHands): Promise<void> {
  for (const name of ['Begin round 1', 'Stop the machine and look', 'Firm peaks', 'Stop: this is it'])
    await hands.press(page.getByRole('button', { name }));
}
