import { type ChildProcess, spawn } from 'node:child_process';
import { type Browser, chromium, type Page } from 'playwright-core';
import { BROWSER_FLAGS, findBrowser } from './open-browser.ts';

/** A browser as a process of its own on a profile of its own: what it keeps is there again after it was killed. */
export interface Tablet {
  readonly page: Page;
  /** As a battery that falls out does it. */
  kill(): Promise<void>;
}

export async function openTablet(profile: string): Promise<Tablet> {
  const args = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`, ...BROWSER_FLAGS];
  const child = spawn(findBrowser(), [...args, 'about:blank'], { stdio: ['ignore', 'ignore', 'pipe'] });
  const browser = await chromium.connectOverCDP(await readEndpoint(child));
  const [context] = browser.contexts();
  if (!context) throw new Error('the browser came up without its profile');
  const page = context.pages()[0] ?? (await context.newPage());
  return { page, kill: () => end(child, browser) };
}

/** The browser says where it is spoken to (Chrome DevTools Protocol) in its first lines. */
function readEndpoint(child: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = '';
    child.once('exit', (code) => failed(new Error(`the browser ended with ${code}: ${said}`)));
    child.stderr?.on('data', (chunk: Buffer) => {
      said += String(chunk);
      const endpoint = /ws:\/\/\S+/.exec(said)?.[0];
      if (endpoint !== undefined) found(endpoint);
    });
  });
}

function end(child: ChildProcess, browser: Browser): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((ended) => {
    child.once('exit', () => {
      void browser.close().catch(() => undefined);
      ended();
    });
    child.kill('SIGKILL');
  });
}
