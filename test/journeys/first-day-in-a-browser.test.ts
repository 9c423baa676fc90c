import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../workshop/open-browser.ts';
import { inDays } from '../workshop/stamp.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** Somebody new, an empty file, nothing but what the pages say: from the first start to the first batch on the bench. */
describe('the first day in a workshop of one’s own', () => {
  let server: RunningServer;
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    server = await startServer();
    browser = await openBrowser();
    page = await browser.newPage({ locale: 'en-GB', viewport: { width: 820, height: 1180 } });
    page.setDefaultTimeout(20_000);
  });
  afterAll(async () => {
    await browser?.close();
    await server.stop();
  });

  const button = (name: string | RegExp): Locator => page.getByRole('button', { name });
  const link = (name: string | RegExp): Locator => page.getByRole('link', { name });
  const field = (name: string | RegExp): Locator => page.getByLabel(name);
  const steps = () => page.getByRole('region', { name: 'First steps' });

  async function goHome(done: number): Promise<void> {
    await link('This morning').click();
    await steps().getByText(`${done} of 10 done`).waitFor();
  }
  /** Nobody goes on before it is kept: a half-typed form asks. */
  async function save(): Promise<void> {
    await button('Save').click();
    await button('Save').waitFor({ state: 'detached' });
  }
  async function pick(label: string | RegExp, text: string): Promise<void> {
    await page.getByRole('combobox', { name: label }).last().fill(text);
    await page.getByRole('option', { name: text }).first().click();
  }
  async function addMaterial(name: string, kind: string): Promise<void> {
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Name').fill(name);
    await dialog.getByLabel(kind).check();
    await dialog.getByRole('button', { name: 'Save' }).click();
    await dialog.waitFor({ state: 'detached' });
  }

  it('begins with a name, and shows the whole list of first steps with what is done', async () => {
    await page.goto(server.address);
    await field('Name of the workshop').fill('Test Bench');
    await field('Your name').fill('Ada Quill');
    await button('Start').click();
    await steps().getByText('2 of 10 done').waitFor();
    expect(await steps().getByRole('listitem').count()).toBe(10);
    expect(await steps().getByRole('link').first().textContent()).toBe('Add a scale');
  });

  it('says at each place that needs something first what it needs, and leads there', async () => {
    for (const [path, says, act] of [
      ['/making/new', 'A batch needs a formula first', 'Write a formula down'],
      ['/products/new', 'A product needs a formula first', 'Write a formula down'],
      ['/orders/new', 'Nothing is sold yet', 'Add a product'],
    ] as const) {
      await page.goto(server.address + path);
      await page.getByRole('heading', { level: 1 }).filter({ hasText: says }).waitFor();
      expect(await link(act).isVisible(), path).toBe(true);
    }
    for (const path of ['/shelf/receive', '/shelf/opening']) {
      await page.goto(server.address + path);
      await page.getByText('No material is written down yet').waitFor();
      expect(await button('Add the first material').isVisible(), path).toBe(true);
    }
  });

  it('has a scale and an address', async () => {
    await page.goto(server.address);
    await steps().getByRole('link', { name: 'Add a scale' }).click();
    // On a long page: the keyboard stands where the step is taken.
    await page.locator('section:focus').getByRole('button', { name: 'Add a scale' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Name').fill('Bench scale');
    await dialog.getByLabel('Weighs at most').fill('5000');
    await dialog.getByLabel('Smallest step it shows').fill('0.1');
    await dialog.getByRole('button', { name: 'Save' }).click();
    await dialog.waitFor({ state: 'detached' });
    const gb = page.getByRole('group', { name: /Great Britain/ });
    await gb.getByLabel('Name').fill('Test Bench');
    await gb.getByLabel('Address').fill('1 Bench Lane, Testham TT1 1TT, United Kingdom');
    await button('Save it').click();
    await page.getByText('Name and addresses are saved.').waitFor();
    await goHome(4);
  });

  it('counts the shelf, and writes materials down on the spot', async () => {
    await page.goto(`${server.address}/shelf/opening`);
    await button('Add the first material').click();
    await addMaterial('Shea butter', 'an ingredient');
    await field(/^With its tub/).fill('1250');
    await field(/^The tub alone/).fill('50');
    await button('Save it, next tub').click();
    await page.getByText(/200\sg of Shea butter is saved/).waitFor();
    await button(/Not in the list/).click();
    await addMaterial('60 ml tin', 'a tin');
    await field(/^Counted/).fill('40');
    await button('Save it, next tub').click();
    await page.getByText('40 of 60 ml tin is saved').waitFor();
    const counted = page.getByRole('region', { name: 'Found so far' });
    expect(await counted.getByRole('listitem').allTextContents()).toEqual([
      expect.stringMatching(/60 ml tin.*40/),
      expect.stringMatching(/Shea butter.*200/),
    ]);
    await goHome(6);
  });

  it('takes goods in without losing what was typed while a material is added', async () => {
    await page.goto(`${server.address}/shelf/receive`);
    await field(/^Supplier's lot number/).fill('S-77');
    await button(/Not in the list/).click();
    await addMaterial('Sunflower oil', 'an ingredient');
    await field(/^How much/).fill('500');
    expect(await field(/^Supplier's lot number/).inputValue()).toBe('S-77');
    await button('Accept: it may be used').click();
    await page.getByText('Taken in and accepted.').waitFor();
  });

  it('writes the first formula, and the plan says that a recipe is missing until it is there', async () => {
    await goHome(6);
    await steps().getByRole('link', { name: 'Write a formula' }).click();
    await field('Name').fill('Plain balm');
    await field('Letters of its batch numbers').fill('PB');
    await button('Write the recipe down').click();
    await page.waitForURL(/recipe$/);
    await page.goto(`${server.address}/making/new`);
    await page.getByText('A batch needs a recipe first').waitFor();
    await link('Write the recipe down').click();
    await pick('What goes in', 'Shea butter');
    await field('Grams').last().fill('800');
    await button('Add a line').click();
    await pick('What goes in', 'Sunflower oil');
    await field('Grams').last().fill('200');
    await save();
    await page.waitForURL(/\/formulas\/[0-9a-f-]{36}$/);
    await goHome(7);
  });

  it('enters the report, a product and an order, and the list of first steps is gone', async () => {
    await steps().getByRole('link', { name: 'Enter the report' }).click();
    await button(/^Enter a report|^Add a report/).click();
    await field('Reference').fill('R-1');
    await field('Assessor').fill('A. N. Assessor');
    await field('Signed on').fill('2026-11-05');
    await page.getByText('Thursday 5 November 2026').waitFor();
    await field('To be reviewed by').fill(inDays(365));
    await page.getByLabel('Plain balm').check();
    for (const material of ['Shea butter', 'Sunflower oil']) {
      const range = page.getByRole('group', { name: material });
      await range.getByLabel('At the least').fill('10');
      await range.getByLabel('At the most').fill('90');
    }
    await save();
    await goHome(8);
    await steps().getByRole('link', { name: 'Add a product' }).click();
    await field('Name on the label').fill('Plain balm 60 ml');
    await field('Formula').selectOption({ label: 'Plain balm' });
    await field('Declared content').fill('50');
    await field(/^Tin/).selectOption({ label: '60 ml tin' });
    await field(/^Best before, months/).fill('9');
    await button('Save it').click();
    await page.getByText('Plain balm 60 ml is saved.').waitFor();
    await goHome(9);
    await steps().getByRole('link', { name: 'Enter an order' }).click();
    await field('Product 1').selectOption({ label: 'Plain balm 60 ml' });
    await field('How many').fill('3');
    await field('Wanted by').fill(inDays(10));
    await button('Enter the order').click();
    await page.waitForURL(/\/orders\/[0-9a-f-]{36}$/);
    await link('This morning').click();
    await page.getByRole('heading', { name: 'Make next' }).waitFor();
    await steps().waitFor({ state: 'detached' });
  });

  it('starts the first batch', async () => {
    await link('Making').click();
    await link('Start a batch').first().click();
    await field('Tins of Plain balm 60 ml').fill('3');
    await page.getByRole('table', { name: 'Weighing sheet' }).waitFor();
    await page.getByLabel('A trial, never for sale').check();
    await button('Start as a trial').click();
    await page.waitForURL(/\/making\/[0-9a-f-]{36}$/);
    await page.getByText(/^Step 1 of/).waitFor();
  });
});
