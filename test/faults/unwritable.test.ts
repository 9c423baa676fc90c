import { chmodSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type CliOptions, endCli, runCli, startCli } from '../workshop/run-cli.ts';

/** Root may write anywhere, so the program runs as nobody then (uid 65534 on Debian). */
const asNobody: CliOptions = {
  ...(process.getuid?.() === 0 && { uid: 65534 }),
  env: { HOME: '/nonexistent' },
};

const root = mkdtempSync(join(tmpdir(), 'gramwright-unwritable-'));
let folder: string;
beforeEach(() => {
  chmodSync(root, 0o777);
  folder = mkdtempSync(join(root, 'w-'));
});
afterEach(() => chmodSync(folder, 0o755));
afterAll(() => rmSync(root, { recursive: true }));

describe('a folder that cannot be written', () => {
  it('is said in a sentence, with status 1, and nothing is made', async () => {
    chmodSync(folder, 0o555);
    for (const wish of [folder, join(folder, 'inside')]) {
      const refused = await runCli(['start', '--port', '0', '--folder', wish], asNobody);
      expect(refused).toMatchObject({ status: 1, stdout: '' });
      expect(refused.stderr).toBe(
        `The folder ${wish} cannot be written.\nGive yourself the right to write there, or choose another with --folder.\n`,
      );
    }
    expect(readdirSync(folder)).toEqual([]);
  });

  it('is said where the file itself may only be read', async () => {
    chmodSync(folder, 0o777);
    const { child } = await startCli(['--folder', folder], asNobody);
    await endCli(child);
    chmodSync(join(folder, 'workshop.gramwright'), 0o444);
    const refused = await runCli(['start', '--port', '0', '--folder', folder], asNobody);
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain('workshop.gramwright cannot be written');
  });

  it('takes no backup, and the workshop goes on', async () => {
    chmodSync(folder, 0o777);
    const closed = join(root, 'closed');
    mkdirSync(closed, { mode: 0o555 });
    const { child, address } = await startCli(['--folder', folder], asNobody);
    const response = await fetch(`${address}/api/backup`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ folder: closed }),
    });
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({
      problems: [{ code: 'backup-folder-not-writable', where: closed }],
    });
    expect((await fetch(`${address}/api/workshop`)).status).toBe(200);
    expect(await endCli(child)).toBe(0);
    chmodSync(closed, 0o755);
    expect(readdirSync(closed)).toEqual([]);
  });
});
