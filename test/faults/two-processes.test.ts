import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { endCli, runCli, startCli } from '../workshop/run-cli.ts';

let folder: string;
let first: Awaited<ReturnType<typeof startCli>>;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'gramwright-two-'));
  first = await startCli(['--folder', folder]);
});
afterEach(async () => {
  await endCli(first.child, 'SIGKILL');
  rmSync(folder, { recursive: true });
});
const second = () => runCli(['start', '--port', '0', '--folder', folder]);

describe('two processes on one workshop', () => {
  it('the second is told where the first answers, and the first goes on', async () => {
    const refused = await second();
    expect(refused).toMatchObject({ status: 1, stdout: '' });
    expect(refused.stderr).toContain(`is open in another Gramwright at ${first.address}`);
    const begun = await fetch(`${first.address}/api/workshop/begin`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ with: 'own', name: 'Test Bench', firstPerson: 'Ada Quill' }),
    });
    expect(begun.status).toBe(200);
  });

  it('the lock goes with the process, however it ends: no file is left that bars the next', async () => {
    await endCli(first.child, 'SIGKILL');
    const next = await startCli(['--folder', folder]);
    expect((await fetch(`${next.address}/api/health`)).status).toBe(200);
    expect(await endCli(next.child)).toBe(0);
  });

  it('a second that comes while the first is about to close waits for it', async () => {
    const waiting = startCli(['--folder', folder]);
    await new Promise((waited) => setTimeout(waited, 300));
    await endCli(first.child);
    const { child, address } = await waiting;
    expect((await fetch(`${address}/api/health`)).status).toBe(200);
    expect(await endCli(child)).toBe(0);
  });

  it('an address that was left behind by a kill leads a command nowhere: it opens the file itself', async () => {
    await endCli(first.child, 'SIGKILL');
    const made = await runCli(['check-up', '--folder', folder]);
    expect(made).toMatchObject({ status: 0, stderr: '' });
  });
});
