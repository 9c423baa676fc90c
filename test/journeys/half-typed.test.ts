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
