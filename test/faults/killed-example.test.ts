import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startServer } from '../workshop/start-server.ts';

const program = resolve(import.meta.dirname, '../../bin/gramwright');
/** Milliseconds from the start: before the file is there, while the example is being built, and about when it is in. */
const MOMENTS = [250, 500, 800, 1200, 1700, 2300, 3000, 4000];

describe('kill -9 while the example workshop is being built', () => {
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-killed-example-'));
  let whole = 0;

  beforeAll(async () => {
    const server = await startServer({ args: ['--example'] });
    whole = await countEntries(server);
    await server.stop();
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  async function countEntries(server: Awaited<ReturnType<typeof startServer>>): Promise<number> {
    const { tables } = (await (await server.send('exportJson')).json()) as { tables: { entry: unknown[] } };
    return tables.entry.length;
  }

  function killAfter(moment: number, where: string): Promise<void> {
    const args = [program, 'start', '--example', '--port', '0', '--folder', where];
    const child = spawn(process.execPath, args, { stdio: 'ignore' });
    const timer = setTimeout(() => child.kill('SIGKILL'), moment);
    return new Promise((ended) => {
      child.once('exit', () => {
        clearTimeout(timer);
        ended();
      });
    });
  }

  /** Entries in the file that was left behind; nought where there is none, or none was ever written to it. */
  function countLeft(where: string): number {
    const left = new Sqlite(join(where, 'workshop.gramwright'));
    const isMade = left.prepare("select 1 from sqlite_master where name = 'entry'").get() !== undefined;
    const { n } = (isMade ? left.prepare('select count(*) as n from entry').get() : { n: 0 }) as {
      n: number;
    };
    left.close();
    return n;
  }

  it.each(MOMENTS)('after %i ms leaves nothing of it or all of it', async (moment) => {
    const where = mkdtempSync(join(folder, 'at-'));
    await killAfter(moment, where);
    expect([0, whole]).toContain(countLeft(where));
  });

  it('does not bar the next start, which builds it whole', async () => {
    const where = mkdtempSync(join(folder, 'again-'));
    await killAfter(2300, where);
    const server = await startServer({ folder: where, args: ['--example'] });
    expect(await countEntries(server)).toBe(whole);
    const { findings } = await server.call('checkUp');
    expect(findings.filter((finding) => !finding.isSound)).toEqual([]);
    expect(await server.call('getWorkshop')).toMatchObject({ state: 'ready', isExample: true });
    await server.stop();
  });
});
