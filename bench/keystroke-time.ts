import type { CDPSession, Page } from 'playwright-core';
import { openBrowser, openPage } from '../test/workshop/open-browser.ts';
import type { Figure } from './measure.ts';
import { inFolder, type RunningProgram, withProgram } from './running-program.ts';

const KEYS = 40;

/** What one key costs on the check page of the example: the browser's own count of its main thread's work, not of waiting. */
export const benchKeystroke = (): Promise<readonly Figure[]> =>
  inFolder((folder) =>
    withProgram(folder, async (program) => {
      await program.fetch('beginWorkshop', { body: { with: 'example' } });
      const browser = await openBrowser();
      try {
        return await typeOn(program, (await openPage(browser, '')).page);
      } finally {
        await browser.close();
      }
    }),
  );

async function typeOn(program: RunningProgram, page: Page): Promise<readonly Figure[]> {
  const formula = (await program.read('listFormulas')).find((one) => one.latest?.lines.length === 3);
  if (!formula) throw new Error('the example has a butter with two oils');
  await page.goto(`${program.address}/formulas/${formula.id}/check`);
  const field = page.locator('#try input').last();
  await field.waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.setTimeDomain', { timeDomain: 'threadTicks' });
  await session.send('Performance.enable');
  const type = async (keys: number) => {
    for (let key = 0; key < keys; key += 1) {
      await field.press(key % 2 === 0 ? '1' : 'Backspace');
      await page.evaluate('new Promise((done) => requestAnimationFrame(() => setTimeout(done)))');
    }
  };
  await type(KEYS);
  const before = await readWork(session);
  await type(KEYS);
  const after = await readWork(session);
  const perKey = (what: keyof Work): number => ((after[what] - before[what]) * 1000) / KEYS;
  return [
    { name: 'a key on the check page: script', value: perKey('script'), unit: 'ms', beside: 'aim 16' },
    { name: 'a key on the check page: all of its work', value: perKey('all'), unit: 'ms', beside: '' },
  ];
}

interface Work {
  readonly script: number;
  readonly all: number;
}

async function readWork(session: CDPSession): Promise<Work> {
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (name: string): number => metrics.find((each) => each.name === name)?.value ?? Number.NaN;
  return { script: of('ScriptDuration'), all: of('TaskDuration') };
}
