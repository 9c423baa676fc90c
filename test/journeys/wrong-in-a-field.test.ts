import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** Somebody who types a figure and waits for the answer is told why none comes. */
describe('a figure that cannot be read', () => {
  let server: RunningServer;
  let browser: Browser;
  let person = '';
  let mixture = '';

  beforeAll(async () => {
    server = await startServer({ args: ['--example'] });
    browser = await openBrowser();
    person = (await server.call('getWorkshop')).people[0]?.id ?? '';
    mixture = (await server.call('listFormulas')).find((formula) => formula.kind === 'mixture')?.id ?? '';
  });
  afterAll(async () => {
    await browser?.close();
    await server.stop();
  });

  const typeInto = async (page: Page, path: string, label: string, typed: string) => {
    await page.goto(server.address + path);
    await page.getByLabel(label).first().fill(typed);
  };

  it.each([
    ['5,5', 'without comma or point, such as 12'],
    ['abc', 'which is not a whole number'],
    ['-3', 'less than nothing'],
    ['2.5', 'is not a whole number'],
  ])('such as %s is explained at its field, while it is still being typed in', async (typed, sentence) => {
    const { page, context } = await openPage(browser, person);
    await typeInto(page, '/orders/new', 'How many', typed);
    await page.getByText(sentence).waitFor();
    await typeInto(page, `/making/new?formula=${mixture}`, 'Tins of', typed);
    await page.getByText(sentence).waitFor();
    await page.getByLabel('Tins of').first().fill('3');
    await page.getByText(sentence).waitFor({ state: 'detached' });
    await context.close();
  });

  it('is said in one place, and is gone with the figure', async () => {
    const { page, context } = await openPage(browser, person);
    await typeInto(page, '/orders/new', 'How many', '-5');
    const act = page.getByRole('button', { name: 'Enter the order' });
    await act.click();
    const said = page.getByRole('alert').filter({ hasText: 'less than nothing' });
    await said.waitFor();
    expect(await said.count()).toBe(1);
    await page.getByLabel('How many').first().fill('5');
    await page.getByText('less than nothing').first().waitFor({ state: 'detached' });
    expect(await page.getByRole('alert').filter({ hasText: /\S/ }).count()).toBe(0);
    await context.close();
  });

  it.each([
    ['At most, by the report', '.', 'which is not a number'],
    ['At most, by the report', '-1', 'it must be above 0'],
    ['Parts of', '1,5', 'A comma may part thousands or decimals'],
    ['For a batch of', '-1', 'less than nothing'],
  ])(
    'on the scent page (%s: %s) takes the answer away and is explained at its field',
    async (label, typed, sentence) => {
      const { page, context, errors } = await openPage(browser, person);
      const answer = page.getByRole('heading', { level: 1, name: /^At most .* scent/ });
      await page.goto(`${server.address}/formulas/${mixture}/scent`);
      await answer.waitFor();
      const field = page.getByLabel(label).first();
      const before = await field.inputValue();
      await field.fill(typed);
      await page.getByRole('heading', { level: 1, name: /^Not worked out/ }).waitFor();
      await page.getByText(sentence).waitFor();
      expect(await page.getByRole('button', { name: 'Change the recipe so' }).count()).toBe(0);
      await field.fill(before);
      await answer.waitFor();
      expect(errors).toEqual([]);
      await context.close();
    },
  );

  it('among the amounts that are tried leaves no answer of other amounts standing, and is explained at its field', async () => {
    const { page, context, errors } = await openPage(browser, person);
    await page.goto(`${server.address}/formulas/${mixture}/check`);
    const answer = page.getByRole('heading', { level: 1, name: /may be made for sale/ });
    await answer.waitFor();
    const field = page.getByRole('textbox').last();
    const before = await field.inputValue();
    await field.fill('abc');
    await page.getByRole('heading', { level: 1, name: /^Not judged: what is typed for/ }).waitFor();
    await page.getByText('which is not a number').waitFor();
    expect(await page.getByText('Great Britain:').count()).toBe(0);
    await field.fill(before);
    await answer.waitFor();
    await page.getByLabel('What follows is of').selectOption('EU');
    await page.waitForURL(/\/check\?markets=EU$/);
    await page.reload();
    await page.getByText('Room to move').waitFor();
    expect(await page.getByLabel('What follows is of').inputValue()).toBe('EU');
    expect(await page.getByRole('listitem').filter({ hasText: 'Great Britain: yes' }).count()).toBe(1);
    await page.goBack();
    await answer.waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
