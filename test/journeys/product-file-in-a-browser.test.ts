import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { textOfPdf } from '../workshop/render-pdf.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** From a customer's word to the file that holds it, on the example workshop. */
describe('a complaint and the product file in a browser', () => {
  let server: RunningServer;
  let browser: Browser;
  let page: Page;
  let errors: string[] = [];
  let product = '';

  beforeAll(async () => {
    server = await startServer({ args: ['--example'] });
    browser = await openBrowser();
    const person = (await server.call('getWorkshop')).people[0]?.id ?? '';
    product = (await server.call('listComplaints'))[0]?.productId ?? '';
    ({ page, errors } = await openPage(browser, person, { viewport: { width: 820, height: 1180 } }));
    page.setDefaultTimeout(20_000);
  });
  afterAll(async () => {
    await browser?.close();
    await server.stop();
  });

  const heading = () => page.getByRole('heading', { level: 1 });
  const missing = () => page.getByRole('region', { name: 'What is missing' });

  it('enters a serious effect from the batch’s page, and says who has to be told', async () => {
    const [known] = await server.call('listComplaints');
    await page.goto(`${server.address}/trace/${known?.lotId}`);
    await page.getByRole('link', { name: 'Enter a complaint' }).click();
    await page.getByLabel('What was said').fill('A night in hospital after a swelling.');
    await page.getByLabel('What it counts as').selectOption({ label: 'a serious undesirable effect' });
    await page.getByRole('button', { name: 'Write it down' }).click();
    // Nothing says yet what makes it serious.
    await page.getByRole('alert').getByText('Nothing says what makes it serious.').waitFor();
    await page.getByLabel('a stay in hospital').check();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('tell the Secretary of State without delay').waitFor();
    expect(await heading().textContent()).toContain('the authority has to be told');
    expect(await page.getByRole('link', { name: 'The batch’s whole story' }).count()).toBe(1);
  });

  it('shows it in the product file, and leads from what is missing to where it is written', async () => {
    await page.goto(`${server.address}/products/${product}/file`);
    await missing().getByText('Nobody has looked into the serious effect').waitFor();
    await missing().getByRole('link', { name: 'Mend it: Nothing is said on animal testing.' }).click();
    await page.getByLabel('Animal testing').last().fill('We test nothing on animals.');
    await page.getByLabel('Number of the notification in Great Britain').fill('GB-77');
    await page.getByRole('button', { name: 'Save it' }).click();
    await missing().getByText('Nobody has looked into the serious effect').waitFor();
    expect(await missing().getByText('animal testing').count()).toBe(0);
    expect(await page.getByText('We test nothing on animals.').count()).toBe(1);
    expect(await page.getByText('GB-77').count()).toBe(1);
  });

  it('folds its parts, each with its state, opens one from the list and with the keyboard, and prints all of them', async () => {
    const list = page.getByRole('navigation', { name: 'The file, part by part' });
    expect(
      await list.getByRole('listitem').filter({ hasText: 'Undesirable effects' }).textContent(),
    ).toContain('lacks 1 thing');
    const animals = page.locator('#animal-testing');
    const typed = animals.getByText('We test nothing on animals.');
    expect(await typed.isVisible()).toBe(false);
    expect(await textOfPdf(await page.pdf())).toContain('We test nothing on animals.');
    await list.getByRole('link', { name: /^Data on animal testing/ }).click();
    await typed.waitFor();
    await animals.locator('summary').focus();
    await page.keyboard.press('Enter');
    await typed.waitFor({ state: 'hidden' });
  });

  it('takes a PDF under a heading, and lets it out again', async () => {
    await page.getByRole('link', { name: 'Toxicological profile of the substances' }).click();
    const chapter = page.locator('#toxicology');
    await chapter.locator('input[type=file]').setInputFiles({
      name: 'Profile.pdf',
      mimeType: 'application/pdf',
      buffer: Buffer.from('%PDF-1.4\n'),
    });
    await chapter.getByRole('link', { name: 'Profile.pdf' }).waitFor();
    await chapter.getByRole('button', { name: 'Take out Profile.pdf' }).click();
    await chapter.getByRole('link', { name: 'Profile.pdf' }).waitFor({ state: 'detached' });
  });

  it('copies each field of the notification, and sends nothing', async () => {
    await page.goto(`${server.address}/products/${product}/notification`);
    const row = page.getByRole('listitem').filter({ hasText: 'Responsible person' }).first();
    await row.getByRole('button', { name: 'Copy' }).click();
    await row.getByRole('status').filter({ hasText: /./ }).waitFor();
    await page.getByLabel('European Union and Northern Ireland').check();
    await page.getByText('Corrin Quay Agents').first().waitFor();
  });

  it('reckons a margin once a dose is typed in', async () => {
    const mixture = (await server.call('listFormulas')).find(({ kind }) => kind === 'mixture');
    await page.goto(`${server.address}/formulas/${mixture?.id}/worksheet`);
    await page.getByRole('button', { name: 'Type one in' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Substance').fill('Tocopherol');
    await dialog.getByLabel('Point of departure').last().fill('500');
    await dialog.getByLabel('Source').fill('Invented for the test');
    await dialog.getByRole('button', { name: 'Save it' }).click();
    await dialog.waitFor({ state: 'detached' });
    await page.getByText('500 mg/kg/day, oral: Invented for the test').waitFor();
    // The one refusal that was asked for, of a serious effect without a mark.
    expect(errors).toEqual([expect.stringContaining('422')]);
  });
});
