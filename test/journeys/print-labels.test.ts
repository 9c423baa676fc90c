import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

/** Labels are printed by a press of a person, never by a link. */
describe('printing labels', () => {
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

  it('writes the print down once for a press, opens the paper, and offers it again by a link', async () => {
    const [run] = await server.call('listRuns');
    const { page, context, errors } = await openPage(browser, person);
    await page.goto(`${server.address}/labels/${run?.id}`);
    const paper = context.waitForEvent('page');
    await page.getByRole('button', { name: 'Print the label' }).click();
    await paper;
    const link = page.getByRole('link', { name: /^Open the labels/ });
    const address = (await link.getAttribute('href')) ?? '';
    expect(address).toMatch(/^\/api\/label-prints\/[\w-]+\/label\.pdf$/);
    const pdf = await fetch(server.address + address);
    expect(pdf.headers.get('content-type')).toBe('application/pdf');
    expect(Buffer.from(await pdf.arrayBuffer()).toString('latin1', 0, 5)).toBe('%PDF-');
    const { tables } = (await (await server.send('exportJson')).json()) as {
      tables: { label_print: { entry_id: string }[]; entry: { id: string; person_id: string }[] };
    };
    expect(tables.label_print).toHaveLength(1);
    const entry = tables.entry.find((row) => row.id === tables.label_print[0]?.entry_id);
    expect(entry?.person_id).toBe(person);
    expect(errors).toEqual([]);
    await context.close();
  });
});
