import { existsSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { type Browser, chromium } from 'playwright-core';
import { makeBase } from '../example/make-and-fill.ts';
import { type Figure, quantile } from './measure.ts';
import { inFolder, type RunningProgram, withProgram } from './running-program.ts';
import { buildShop, receiveAll } from './shop.ts';

const PLACES = [process.env.CHROMIUM ?? '', '/usr/bin/chromium', '/usr/bin/chromium-browser'];
const OPENED = 7;

/** A batch of 25 lines that waits for its first weighing. */
async function startBatch(program: RunningProgram): Promise<string> {
  const shop = await buildShop(program);
  await receiveAll(program, shop.materials, { grams: 50_000, pieces: 100 });
  const base = await makeBase(program, shop.base, 12_000, 8);
  await program.write('sayFirm', { remark: 'Set in the cold.' }, { id: base });
  const size = { by: 'grams' as const, grams: '1000' };
  const wish = { revisionId: shop.butterRevision, purpose: 'trial' as const, markets: ['GB' as const], size };
  return (await program.write('startBatch', { wish })).id;
}

/** From the address to a field that takes digits, in a browser that has nothing of the page yet. */
async function openMs(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 820, height: 1180 } });
  const page = await context.newPage();
  const start = performance.now();
  await page.goto(address);
  await page.getByRole('textbox', { name: 'Grams on the scale' }).fill('1');
  const took = performance.now() - start;
  await context.close();
  return took;
}

/** The bench's page to the first digit; not known where there is no browser. */
export const benchBenchPage = (): Promise<readonly Figure[]> =>
  inFolder((folder) =>
    withProgram(folder, async (program) => {
      const name = 'the bench page from its address to the first digit, nothing kept: median';
      const executablePath = PLACES.find((place) => place !== '' && existsSync(place));
      if (executablePath === undefined)
        return [{ name, value: Number.NaN, unit: 'ms', beside: 'no browser here' }];
      const batch = await startBatch(program);
      const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
      const times: number[] = [];
      for (let opened = 0; opened < OPENED; opened += 1)
        times.push(await openMs(browser, `${program.address}/making/${batch}`));
      await browser.close();
      return [{ name, value: quantile(times, 0.5), unit: 'ms', beside: '' }];
    }),
  );
