import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { chromium } from 'playwright-core';

/**
 * Draws the PNG icons of the installed page from icon.svg: node scripts/make-icons.mjs. A maskable icon keeps what
 * matters within the circle of 40 % of its width around its middle (W3C, Web Application Manifest, icon masks).
 */
const folder = resolve(import.meta.dirname, '../src/web/public');
const drawing = readFileSync(join(folder, 'icon.svg'), 'utf8');
const PAPER = '#f7f3ea';
const ICONS = [
  { name: 'icon-192.png', size: 192, share: 1, ground: 'transparent' },
  { name: 'icon-512.png', size: 512, share: 1, ground: 'transparent' },
  { name: 'icon-maskable-512.png', size: 512, share: 0.6, ground: PAPER },
];

const places = [process.env.CHROMIUM ?? '', '/usr/bin/chromium', '/usr/bin/chromium-browser'];
const executablePath = places.find((place) => place !== '' && existsSync(place));
if (executablePath === undefined) throw new Error('no chromium found: install it, or set CHROMIUM');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
for (const { name, size, share, ground } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const side = size * share;
  await page.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${ground}">
      <img style="width:${side}px;height:${side}px" src="data:image/svg+xml,${encodeURIComponent(drawing)}">`,
  );
  await page.locator('img').evaluate((image) => image.decode());
  writeFileSync(join(folder, name), await page.screenshot({ omitBackground: true }));
  await page.close();
}
await browser.close();
