import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { inkRows, renderPage } from '../workshop/render-pdf.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** From a ruler to labels on a begun sheet, and what became of them. */
describe('the label desk', () => {
  let server: RunningServer;
  let browser: Browser;
  let person = '';

  beforeAll(async () => {
    server = await startServer({ args: ['--example'] });
    browser = await openBrowser();
    person = (await server.call('getWorkshop')).people[0]?.id ?? '';
  });
  afterAll(async () => {
    await browser?.close();
    await server.stop();
  });

  it('takes a product from its design to stickers printed, counted and accounted for', async () => {
    const run = (await server.call('listRuns')).find(({ productName }) => productName.startsWith('Orange'));
    const [sheet] = await server.call('listLabelSheets');
    if (!run || !sheet) throw new Error('the example has a run and a sheet');
    const { page, context, errors } = await openPage(browser, person);

    // The printer is two millimetres too far up.
    await page.goto(`${server.address}/labels/sheets/${sheet.id}`);
    await page.getByLabel('Move everything down by').fill('2');
    await page.getByRole('button', { name: 'Save the sheet' }).click();
    await page.waitForURL(`${server.address}/labels`);

    // A sticker beside front and back; it takes batch and date from the back.
    await page.goto(`${server.address}/labels/products/${run.productId}`);
    await page.getByRole('img', { name: 'Back', exact: true }).waitFor();
    await page.getByRole('button', { name: 'Add a label' }).click();
    await page.getByRole('img', { name: 'Sticker', exact: true }).waitFor();
    const back = page.getByRole('img', { name: 'Back', exact: true });
    await expect.poll(() => back.textContent()).not.toContain(run.number);
    await page.getByLabel('Printed on').last().selectOption({ label: sheet.details.name });
    await page.getByRole('button', { name: 'Save the labels' }).click();
    await page.waitForURL(`${server.address}/labels`);

    // The sheet is begun: four of its labels are gone.
    await page.goto(`${server.address}/labels/${run.id}`);
    await page.getByRole('radio', { name: 'Sticker', exact: true }).check();
    await page.getByRole('radio', { name: 'Position 5', exact: true }).check();
    const copies = Number(await page.getByLabel('Copies').inputValue());
    expect(copies).toBe(run.closing?.units);
    const paper = context.waitForEvent('page');
    await page.getByRole('button', { name: 'Print the label' }).click();
    await paper;
    const address = await page.getByRole('link', { name: /^Open the labels/ }).getAttribute('href');
    const pdf = new Uint8Array(await (await fetch(server.address + (address ?? ''))).arrayBuffer());
    expect(printedPositions(pdf, sheet.details.geometry, 2)).toEqual(
      Array.from({ length: copies }, (_, index) => index + 5),
    );

    // One was torn, and the sheet had one more on it than there are tins.
    await page.getByLabel('Which label').selectOption({ label: 'Sticker' });
    await page.getByLabel('Spoilt', { exact: true }).fill('1');
    await page.getByRole('button', { name: 'Write the count down' }).click();
    const odd = page.getByText(`${copies} on tins and 1 spoilt are 1 more than was printed.`, {
      exact: false,
    });
    await odd.first().waitFor();
    await page.getByLabel('Remark').fill('One had stuck to the sheet');
    await page.getByRole('button', { name: 'Write the count down' }).click();
    await page.getByRole('button', { name: 'Print the label' }).click();
    await page.getByText(`${copies + 1} printed, ${copies} on tins, 1 spoilt: none is left over.`).waitFor();
    // The count that did not add up was refused, and the browser notes it.
    expect(errors.filter((error) => !error.includes('422'))).toEqual([]);
    await context.close();
  });
});

interface Geometry {
  readonly columns: number;
  readonly rows: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly pitchAcrossMm: number;
  readonly pitchDownMm: number;
  readonly label: { readonly shape: string; readonly widthMm?: number; readonly heightMm?: number };
}

/** Positions of the sheet, counted from 1, on which the printed page has ink. */
function printedPositions(pdf: Uint8Array, geometry: Geometry, downMm: number): number[] {
  const page = renderPage(pdf, 100);
  const { columns, rows, leftMm, topMm, pitchAcrossMm, pitchDownMm, label } = geometry;
  return Array.from({ length: columns * rows }, (_, index) => index + 1).filter((position) => {
    const left = leftMm + ((position - 1) % columns) * pitchAcrossMm;
    const top = topMm + Math.floor((position - 1) / columns) * pitchDownMm + downMm;
    const area = { left, top, right: left + (label.widthMm ?? 0), bottom: top + (label.heightMm ?? 0) };
    return inkRows(page, area).length > 0;
  });
}
