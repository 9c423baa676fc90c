import { existsSync } from 'node:fs';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';

export const BROWSER_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const PLACES = [
  process.env.CHROMIUM ?? '',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

/** The Debian package's browser, or the one that CHROMIUM names. */
export function findBrowser(): string {
  const executablePath = PLACES.find((place) => place !== '' && existsSync(place));
  if (executablePath === undefined)
    throw new Error('no chromium found: install the package chromium, or set CHROMIUM');
  return executablePath;
}

export const openBrowser = (more: readonly string[] = []): Promise<Browser> =>
  chromium.launch({ executablePath: findBrowser(), args: [...BROWSER_FLAGS, ...more] });

/** A page of somebody who said who is working; page errors fail the test that asks for them. */
export async function openPage(
  browser: Browser,
  personId: string,
  options: BrowserContextOptions = {},
): Promise<{ page: Page; context: BrowserContext; errors: string[] }> {
  const context = await browser.newContext({
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    // Tests that hold requests up see only what goes past a service worker; those about it ask for it.
    serviceWorkers: 'block',
    ...options,
  });
  await context.addInitScript(`localStorage.setItem('gramwright.person', ${JSON.stringify(personId)})`);
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  return { page, context, errors };
}
