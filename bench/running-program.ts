import { type ChildProcess, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { type RouteName, routes } from '../src/contract/index.ts';
import { findProgramFolder } from '../src/machine/index.ts';
import type { SigningHand } from './shop.ts';

/** The built program as a process of its own, as `gramwright start` runs it, asked over HTTP. */
export interface RunningProgram extends SigningHand {
  readonly process: ChildProcess;
  readonly address: string;
  /** From the start of the process to the line that says where it listens. */
  readonly startMs: number;
  /** The answer as it comes, read to its end: for papers, and for timing. */
  fetch(name: RouteName, request?: Asked): Promise<Buffer>;
  stop(): Promise<void>;
}

export interface Asked {
  readonly params?: Record<string, string>;
  readonly query?: Record<string, string>;
  readonly body?: unknown;
}

export const stampBy = (person: string) => ({
  id: randomUUID(),
  at: new Date().toISOString(),
  by: person,
  device: 'bench',
});

/** A folder of its own for `work`, gone afterwards whatever happens. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-bench-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Runs `work` with the program on `folder`, and ends the program whatever happens. */
export async function withProgram<T>(
  folder: string,
  work: (program: RunningProgram) => Promise<T>,
): Promise<T> {
  const program = await startProgram(folder);
  try {
    return await work(program);
  } finally {
    await program.stop();
  }
}

async function startProgram(folder: string): Promise<RunningProgram> {
  const started = performance.now();
  const entry = join(findProgramFolder(), 'bin', 'gramwright');
  const child = spawn(process.execPath, [entry, 'start', '--folder', folder, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const address = await readAddress(child);
  const startMs = performance.now() - started;
  let person = '';
  const fetchBytes = (name: RouteName, asked: Asked = {}) => ask(address, name, asked);
  const fetchJson = async (name: RouteName, asked: Asked) =>
    JSON.parse((await fetchBytes(name, asked)).toString()) as never;
  return {
    process: child,
    address,
    startMs,
    fetch: fetchBytes,
    // The first entry of all has no stamp.
    begin: (name, firstPerson) => fetchJson('beginWorkshop', { body: { with: 'own', name, firstPerson } }),
    setPerson(id) {
      person = id;
    },
    read: (name, asked = {}) => fetchJson(name, asked),
    write: (name, body, params = {}) =>
      fetchJson(name, { params, body: { stamp: stampBy(person), ...(body as object) } }),
    stop: () => endOf(child),
  };
}

/** The program says where it listens in its first line. */
function readAddress(child: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = '';
    child.once('exit', (code) => failed(new Error(`the program ended with ${code}: ${said}`)));
    child.stdout?.on('data', (chunk: Buffer) => {
      said += String(chunk);
      const address = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (address !== undefined) found(address);
    });
  });
}

async function ask(
  address: string,
  name: RouteName,
  { params = {}, query = {}, body }: Asked,
): Promise<Buffer> {
  const { method, path } = routes[name];
  const filled = path.replace(/:(\w+)/g, (_all, key: string) => encodeURIComponent(params[key] ?? ''));
  const search = new URLSearchParams(query).toString();
  const response = await fetch(
    address + (search === '' ? filled : `${filled}?${search}`),
    method === 'GET'
      ? {}
      : { method, headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) },
  );
  const bytes = Buffer.from(await response.arrayBuffer());
  if (!response.ok) throw new Error(`${name}: ${response.status} ${bytes}`);
  return bytes;
}

function endOf(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((ended) => {
    child.once('exit', () => ended());
    child.kill('SIGTERM');
  });
}
