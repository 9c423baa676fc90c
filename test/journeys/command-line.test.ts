import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { must } from '../../src/core/problem.ts';
import { networkFolder, readAddressHint, readNetworkChoice } from '../../src/machine/index.ts';
import { openStorage } from '../../src/storage/index.ts';
import { type CliOptions, endCli, runCli, startCli } from '../workshop/run-cli.ts';
import { countEntries } from '../workshop/small-file.ts';
import { freePort } from '../workshop/start-server.ts';

const root = mkdtempSync(join(tmpdir(), 'gramwright-cli-'));
afterAll(() => rmSync(root, { recursive: true }));
let folder: string;
let file: string;
const running: Awaited<ReturnType<typeof startCli>>[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(root, 'w-'));
  file = join(folder, 'workshop.gramwright');
});
afterEach(async () => {
  for (const { child } of running.splice(0)) await endCli(child, 'SIGKILL');
});

async function startHere(...args: string[]) {
  const started = await startCli(['--folder', folder, ...args]);
  running.push(started);
  return started;
}
const inFolder = (...args: string[]) => runCli([...args, '--folder', folder]);

async function begin(address: string): Promise<void> {
  const response = await fetch(`${address}/api/workshop/begin`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ with: 'own', name: 'Test Bench', firstPerson: 'Ada Quill' }),
  });
  expect(response.status).toBe(200);
}
/** A begun workshop that nobody has open. */
async function makeWorkshop(): Promise<void> {
  const { child, address } = await startHere();
  await begin(address);
  expect(await endCli(child)).toBe(0);
}

describe('gramwright start', () => {
  it('tells its address and its file, one line each, and ends cleanly when told to', async () => {
    const { child, address, told } = await startHere();
    expect((await fetch(`${address}/api/health`)).status).toBe(200);
    expect(readAddressHint(file)).toBe(address);
    expect(await endCli(child, 'SIGINT')).toBe(0);
    const lines = told().trim().split('\n');
    expect(lines).toHaveLength(2);
    expect(lines[0]).toContain(address);
    expect(lines[1]).toContain(file);
    expect(readdirSync(folder)).toEqual(['workshop.gramwright']);
  });

  it('takes its folder from GRAMWRIGHT_FOLDER, else from the home folder, and makes it', async () => {
    const byVariable = join(folder, 'by-variable');
    const first = await startCli([], { env: { GRAMWRIGHT_FOLDER: byVariable } });
    running.push(first);
    const second = await startCli([], { env: { GRAMWRIGHT_FOLDER: '', HOME: folder } });
    running.push(second);
    expect(existsSync(join(byVariable, 'workshop.gramwright'))).toBe(true);
    expect(existsSync(join(folder, 'Gramwright', 'workshop.gramwright'))).toBe(true);
  });

  it('refuses a port that is taken, names it and another, and lets the file go', async () => {
    const { address } = await startHere();
    const port = new URL(address).port;
    const other = mkdtempSync(join(root, 'other-'));
    const refused = await runCli(['start', '--folder', other, '--port', port]);
    expect(refused).toMatchObject({ status: 1, stdout: '' });
    expect(refused.stderr).toContain(`Port ${port} is taken`);
    expect(refused.stderr).toContain(`--port ${Number(port) + 1}`);
    expect(existsSync(join(other, 'workshop.gramwright.address'))).toBe(false);
    must(await openStorage(join(other, 'workshop.gramwright'))).close();
  });

  it.each(['-1', '70000', 'x', '1.5'])('refuses port %s', async (port) => {
    const refused = await inFolder('start', `--port=${port}`);
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain('is no port');
    expect(readdirSync(folder)).toEqual([]);
  });

  it.each(['0', '1023', '65536', 'x'])('refuses port %s for the network', async (port) => {
    const refused = await inFolder('start', `--network-port=${port}`);
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain(`“${port}” is no port for the network`);
    expect(readdirSync(folder)).toEqual([]);
  });

  it('opens the network where it is asked for, and by itself from then on; on this computer it answers plainly', async () => {
    const port = await freePort();
    const choice = () => readNetworkChoice(networkFolder(file));
    const asked = await startHere(`--network-port=${port}`);
    await expect.poll(choice, { timeout: 30_000 }).toEqual({ isOn: true, port });
    expect(asked.address).toMatch(/^http:\/\/127\.0\.0\.1:/);
    expect(await endCli(asked.child)).toBe(0);
    const again = await startHere();
    const network = async () =>
      ((await (await fetch(`${again.address}/api/reach`)).json()) as { network: object }).network;
    await expect.poll(network, { timeout: 30_000 }).toMatchObject({ isOn: true, port });
  });

  it('refuses a folder that is a file', async () => {
    writeFileSync(join(folder, 'a-file'), '');
    const refused = await runCli(['start', '--folder', join(folder, 'a-file')]);
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain('a file stands in the way');
  });

  it('writes the day’s backup once a workshop is begun, and not a second the same day', async () => {
    await makeWorkshop();
    const again = await startHere();
    expect(await endCli(again.child)).toBe(0);
    const once = readdirSync(join(folder, 'backups'));
    expect(once).toHaveLength(1);
    expect(once[0]).toMatch(/^workshop-.*-daily\.gramwright$/);
    const later = await startHere();
    expect(await endCli(later.child)).toBe(0);
    expect(readdirSync(join(folder, 'backups'))).toEqual(once);
  });
});

describe('commands on a workshop', () => {
  it('refuse where there is none, and make none', async () => {
    for (const args of [['backup'], ['check-up'], ['export', '--json']]) {
      const refused = await inFolder(...args);
      expect(refused.status).toBe(1);
      expect(refused.stderr).toContain('There is no workshop file');
    }
    expect(readdirSync(folder)).toEqual([]);
  });

  it('open the file themselves, or ask the server that has it', async () => {
    const { child, address } = await startHere();
    await begin(address);
    const asked = await inFolder('backup');
    expect(asked.stderr).toBe('');
    expect(asked.status).toBe(0);
    await endCli(child);
    const opened = await inFolder('backup', '--to', root);
    expect(opened.status).toBe(0);
    const written = /looked through: (.+) \(/;
    expect(written.exec(asked.stdout)?.[1]).toContain(join(folder, 'backups'));
    const copy = must(await openStorage(written.exec(opened.stdout)?.[1] ?? ''));
    expect(countEntries(copy)).toBe(1);
    await copy.close();
  });

  it('back up to no folder that is not there', async () => {
    await makeWorkshop();
    const refused = await inFolder('backup', '--to', join(root, 'unplugged'));
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain('is not there');
    expect(existsSync(join(root, 'unplugged'))).toBe(false);
  });

  it('restore a backup, and refuse one that is none', async () => {
    await makeWorkshop();
    const { stdout } = await inFolder('backup');
    const backup = /looked through: (.+) \(/.exec(stdout)?.[1] ?? '';
    const restored = await inFolder('restore', backup);
    expect(restored.stderr).toBe('');
    expect(restored.stdout).toContain('before-restore');
    const back = must(await openStorage(file));
    expect(countEntries(back)).toBe(2);
    await back.close();
    const digest = createHash('sha256').update(readFileSync(file)).digest('hex');
    writeFileSync(join(folder, 'letter.txt'), 'a letter');
    const refused = await inFolder('restore', join(folder, 'letter.txt'));
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain('is damaged');
    expect(createHash('sha256').update(readFileSync(file)).digest('hex')).toBe(digest);
  });

  it('restore nothing under a running server, and name its address', async () => {
    const { address } = await startHere();
    await begin(address);
    const { stdout } = await inFolder('backup');
    const backup = /looked through: (.+) \(/.exec(stdout)?.[1] ?? '';
    const refused = await inFolder('restore', backup);
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain(`open in another Gramwright at ${address}`);
    expect((await fetch(`${address}/api/workshop`)).status).toBe(200);
  });

  it('check up: status 0 for a sound file, 1 for one that was changed behind our back', async () => {
    await makeWorkshop();
    expect((await inFolder('check-up')).status).toBe(0);
    const storage = must(await openStorage(file));
    storage.handle.exec("drop trigger entry_never_update; update entry set payload = '{}'");
    await storage.close();
    const looked = await inFolder('check-up');
    expect(looked.status).toBe(1);
    expect(looked.stdout).toContain(
      'WRONG  The chain of 1 entry is unbroken. 1 wrong: entry 1 (workshop-begun).',
    );
  });

  it('write everything down, and over no file that is there', async () => {
    await makeWorkshop();
    const json = join(folder, 'all.json');
    expect((await inFolder('export', '--json', '--to', json)).status).toBe(0);
    const all = JSON.parse(readFileSync(json, 'utf8')) as { tables: { person: { name: string }[] } };
    expect(all.tables.person.map((row) => row.name)).toEqual(['Ada Quill']);
    const zip = join(folder, 'all.zip');
    expect((await inFolder('export', '--csv', '--to', zip)).status).toBe(0);
    expect(strFromU8(unzipSync(readFileSync(zip))['person.csv'] ?? new Uint8Array())).toContain('Ada Quill');
    const again = await inFolder('export', '--csv', '--to', zip);
    expect(again.status).toBe(1);
    expect(again.stderr).toContain('was not written');
    expect((await inFolder('export')).stderr).toContain('Choose one');
  });
});

describe('gramwright calc', () => {
  const INPUT = '{"nominal": 60, "unit": "g"}';
  /** In a folder without a workshop, with a home that has none. */
  const calc = (args: readonly string[], options: CliOptions = {}) =>
    runCli(['calc', ...args], { cwd: folder, env: { HOME: folder, GRAMWRIGHT_FOLDER: '' }, ...options });

  it('answers from an argument or from standard input, with JSON only, and leaves no file', async () => {
    const ways = await Promise.all([
      calc(['tolerable-error', INPUT]),
      calc(['tolerable-error', '-'], { input: INPUT }),
      calc(['tolerable-error'], { input: INPUT }),
    ]);
    for (const { status, stdout, stderr } of ways) {
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      // Directive 76/211/EEC, Annex I, 2.4: 50 to 100 g have a tolerable negative error of 4.5 g.
      expect(JSON.parse(stdout)).toMatchObject({ tolerableError: 4.5, limit1: 55.5 });
    }
    expect(readdirSync(folder)).toEqual([]);
  });

  it('refuses with status 2 and a problem on standard error, nothing given included', async () => {
    for (const refused of [await calc(['tolerable-error', '{}']), await calc(['tolerable-error'])]) {
      expect(refused).toMatchObject({ status: 2, stdout: '' });
      const { problems } = JSON.parse(refused.stderr) as { problems: { says: string }[] };
      expect(problems[0]?.says).not.toBe('');
    }
  });
});

describe('a command typed wrongly', () => {
  it('ends with 2 and says what it knows', async () => {
    const wrong = await runCli(['stat']);
    expect(wrong.status).toBe(2);
    expect(wrong.stderr).toContain('stat');
    const help = await runCli(['--help']);
    expect(help.status).toBe(0);
    for (const command of ['start', 'calc', 'backup', 'restore', 'check-up', 'export']) {
      expect(help.stdout).toContain(command);
    }
    expect((await runCli(['--version'])).stdout.trim()).toMatch(/^\d+\.\d+\.\d+$/);
  });
});
