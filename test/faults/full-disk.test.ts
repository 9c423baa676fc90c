import { type ChildProcess, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { endCli, runCli, startCli } from '../workshop/run-cli.ts';
import { mountSmallDisk } from '../workshop/small-disk.ts';
import { freePort } from '../workshop/start-server.ts';

const disk = mountSmallDisk(8);
const folder = disk?.folder ?? mkdtempSync(join(tmpdir(), 'gramwright-limit-'));
afterAll(() => (disk ? disk.remove() : rmSync(folder, { recursive: true })));
const running: ChildProcess[] = [];
afterEach(async () => {
  for (const child of running.splice(0)) await endCli(child, 'SIGKILL');
});
const bin = resolve(import.meta.dirname, '../../bin/gramwright');

interface Answer {
  readonly status: number;
  readonly body: { readonly id?: string; readonly problems?: readonly { code: string; says: string }[] };
}
async function post(address: string, path: string, body: object): Promise<Answer> {
  const response = await fetch(address + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  return { status: response.status, body: (await response.json()) as Answer['body'] };
}
const begin = async (address: string): Promise<string> => {
  const { body } = await post(address, '/api/workshop/begin', {
    with: 'own',
    name: 'Test Bench',
    firstPerson: 'Ada',
  });
  return (body as { people?: { id: string }[] }).people?.[0]?.id ?? '';
};
const addPerson = (address: string, by: string, id: string) =>
  post(address, '/api/people', {
    stamp: { id, at: new Date().toISOString(), by, device: 'test' },
    name: `Person ${id}`.padEnd(200, '.'),
  });

/** Adds people until the disk refuses; which entries were acknowledged, and the refusal. */
async function addUntilFull(
  address: string,
  by: string,
): Promise<{ kept: string[]; refusal: Answer | undefined }> {
  const kept: string[] = [];
  for (let tries = 0; tries < 20_000; tries += 1) {
    const id = randomUUID();
    const answer = await addPerson(address, by, id);
    if (answer.status >= 400) return { kept, refusal: answer };
    kept.push(id);
  }
  return { kept, refusal: undefined };
}

async function untilUp(address: string): Promise<void> {
  for (let tries = 0; tries < 200; tries += 1) {
    const isUp = await fetch(`${address}/api/health`).then(
      () => true,
      () => false,
    );
    if (isUp) return;
    await new Promise((waited) => setTimeout(waited, 50));
  }
  throw new Error('the server did not answer');
}

/** Where no disk can be mounted: the shell forbids the program files beyond a size, as a quota would. */
async function startLimited() {
  const port = await freePort();
  const limited = `trap '' XFSZ; ulimit -f 1200; exec ${process.execPath} ${bin} start --folder ${folder} --port ${port}`;
  const child = spawn('bash', ['-c', limited], { stdio: 'ignore' });
  const address = `http://127.0.0.1:${port}`;
  await untilUp(address);
  return { child, address };
}

describe('a full disk', () => {
  it('refuses the entry that does not fit, keeps every one before it, and takes the next once there is room', async () => {
    const first = disk ? await startCli(['--folder', folder]) : await startLimited();
    running.push(first.child);
    const by = await begin(first.address);
    disk?.fillUpTo(600_000);
    const { kept, refusal } = await addUntilFull(first.address, by);
    expect(kept.length).toBeGreaterThan(10);
    const [code, status] = disk ? ['disk-full', 507] : ['disk-trouble', 500];
    expect(refusal).toMatchObject({ status, body: { problems: [{ code }] } });
    expect(refusal?.body.problems?.[0]?.says).toContain('Nothing of this was saved');
    expect((await fetch(`${first.address}/api/workshop`)).status, 'reading goes on').toBe(200);

    disk?.makeRoom();
    if (disk) expect((await addPerson(first.address, by, randomUUID())).status, 'and writing').toBe(201);
    await endCli(first.child);
    const second = await startCli(['--folder', folder]);
    running.push(second.child);
    const { people } = (await (await fetch(`${second.address}/api/workshop`)).json()) as {
      people: { name: string }[];
    };
    const names = people.map((person) => person.name);
    expect(kept.filter((id) => !names.some((name) => name.includes(id)))).toEqual([]);
    expect(people).toHaveLength(kept.length + (disk ? 2 : 1));
    expect((await addPerson(second.address, by, randomUUID())).status).toBe(201);
    expect(await endCli(second.child)).toBe(0);
    expect(await runCli(['check-up', '--folder', folder])).toMatchObject({ status: 0 });
  });

  it('keeps no half of a backup', async () => {
    const backups = join(folder, 'chosen');
    mkdirSync(backups);
    const made = disk ? await fullBackup(backups) : await limitedBackup(backups);
    expect(made.status).toBe(1);
    expect(made.stderr).toContain(disk ? 'is full' : 'did not do as it was told');
    expect(readdirSync(backups)).toEqual([]);
  });

  function fullBackup(backups: string) {
    disk?.fillUpTo(100_000);
    return runCli(['backup', '--folder', folder, '--to', backups]);
  }

  function limitedBackup(backups: string): Promise<{ status: number | null; stderr: string }> {
    const limited = `trap '' XFSZ; ulimit -f 100; exec ${process.execPath} ${bin} backup --folder ${folder} --to ${backups}`;
    const child = spawn('bash', ['-c', limited], { stdio: ['ignore', 'ignore', 'pipe'] });
    let stderr = '';
    child.stderr.on('data', (chunk: Buffer) => {
      stderr += String(chunk);
    });
    return new Promise((ended) => {
      child.once('close', (status) => ended({ status, stderr }));
    });
  }
});
