import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** What is half typed is never lost without a question. */
describe('a half-typed form', () => {
  let server: RunningServer;
  let browser: Browser;
  let person = '';
  let made = '';

  beforeAll(async () => {
    server = await startServer({ args: ['--example'] });
    browser = await openBrowser();
    person = (await server.call('getWorkshop')).people[0]?.id ?? '';
    const batches = await server.call('listBatches');
    made = batches.find((batch) => batch.state === 'made' && batch.formulaKind === 'mixture')?.id ?? '';
  });
  afterAll(async () => {
    await browser?.close();
    await server.stop();
  });

  it('asks before its page is left, stays where that is wanted, and leaves where not', async () => {
    const { page, context, errors } = await openPage(browser, person);
    await page.goto(`${server.address}/making/${made}/fill`);
    const wanted = page.getByLabel(/^Tins wanted/);
    await wanted.fill('7');
    const question = page.getByRole('dialog', { name: 'Leave what you have typed?' });
    await page.getByRole('link', { name: 'Shelf' }).click();
    await question.getByRole('button', { name: 'Stay here' }).click();
    expect(await wanted.inputValue()).toBe('7');
    await page.getByRole('link', { name: 'Shelf' }).click();
    await question.getByRole('button', { name: 'Leave without keeping it' }).click();
    await page.waitForURL(/\/shelf$/);
    expect(errors).toEqual([]);
    await context.close();
  });

  it.each([
    ['/orders/new', 'Note'],
    ['/formulas/new', 'Name'],
    ['/shelf/receive', 'How much'],
    ['/shelf/opening', 'With its tub'],
    ['/products/new', 'Name on the label'],
    ['/workshop', 'Name of the workshop'],
  ])('asks before %s is left', async (path, label) => {
    const { page, context } = await openPage(browser, person);
    await page.goto(server.address + path);
    await page.getByLabel(label).first().fill('7');
    await page.getByRole('link', { name: 'Trace' }).click();
    await page.getByRole('dialog', { name: 'Leave what you have typed?' }).waitFor();
    await context.close();
  });

  it('asks before a material or a report is left, which begin with a choice', async () => {
    const { page, context } = await openPage(browser, person);
    const question = page.getByRole('dialog', { name: 'Leave what you have typed?' });
    await page.goto(`${server.address}/materials/new`);
    await page.getByRole('button', { name: 'Write it down myself' }).click();
    await page
      .getByLabel(/^Supplier/)
      .first()
      .fill('Test Supplies');
    await page.getByRole('link', { name: 'Trace' }).click();
    await question.getByRole('button', { name: 'Leave without keeping it' }).click();
    await page.waitForURL(/\/trace$/);
    await page.goto(`${server.address}/reports`);
    await page.getByRole('button', { name: 'Enter a report' }).click();
    await page.getByLabel('Reference').fill('R-9');
    await page.getByRole('link', { name: 'Trace' }).click();
    await question.waitFor();
    await context.close();
  });

  it('in a dialog stays through a stray tap and Escape', async () => {
    const { page, context } = await openPage(browser, person);
    await page.goto(`${server.address}/orders/customers`);
    await page.getByRole('button', { name: 'Add a customer' }).click();
    const name = page.getByRole('dialog').getByLabel('Name');
    await name.fill('C. Buyer');
    await page.keyboard.press('Escape');
    await page.mouse.click(5, 5);
    expect(await name.inputValue()).toBe('C. Buyer');
    await context.close();
  });

  it.each([
    ['QK', 'is on its way asks nothing, is kept, and goes where was pressed'],
    ['?', 'is refused asks then'],
  ])('whose save, with the code %s, %s', async (code) => {
    const { page, context } = await openPage(browser, person);
    let letThrough: () => void = () => undefined;
    const isPressed = new Promise<void>((resolve) => {
      letThrough = resolve;
    });
    await page.route('**/api/formulas', async (route) => {
      if (route.request().method() === 'POST') await isPressed;
      await route.continue();
    });
    await page.goto(`${server.address}/formulas/new`);
    await page.getByLabel('Name').fill(`Saved on the way ${code}`);
    await page.getByLabel('Letters of its batch numbers').fill(code);
    const sent = page.waitForRequest((request) => request.method() === 'POST');
    await page.getByRole('button', { name: 'Write the recipe down' }).click();
    await sent;
    await page.getByRole('link', { name: 'Shelf' }).click();
    const question = page.getByRole('dialog', { name: 'Leave what you have typed?' });
    expect(await question.count()).toBe(0);
    letThrough();
    const isKept = code !== '?';
    if (isKept) await page.waitForURL(/\/shelf$/);
    else await question.waitFor();
    const names = (await server.call('listFormulas')).map(({ name }) => name);
    expect(names.includes(`Saved on the way ${code}`)).toBe(isKept);
    await context.close();
  });

  it('asks before a reload; an untouched form asks nothing', async () => {
    const { page, context } = await openPage(browser, person);
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    await page.goto(`${server.address}/making/${made}/fill`);
    await page.getByLabel(/^Tins wanted/).waitFor();
    await page.reload();
    expect(asked).toEqual([]);
    await page.getByLabel(/^Tins wanted/).click();
    await page.getByLabel(/^Tins wanted/).fill('7');
    await page.reload();
    expect(asked).toEqual(['beforeunload']);
    await context.close();
  });
});
