import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { z } from 'zod';
import { type RouteName, routes } from '../../src/contract/index.ts';

/** The built program as a process of its own, on a free port and a folder of its own. */
export interface RunningServer {
  readonly address: string;
  readonly folder: string;
  readonly process: ChildProcess;
  call<Name extends RouteName>(name: Name, request?: CallRequest): Promise<Answer<Name>>;
  /** For refusals and files: the raw response. */
  send(name: RouteName, request?: CallRequest): Promise<Response>;
  /** As the power cut does it. */
  kill(): Promise<void>;
  stop(): Promise<void>;
}

export interface CallRequest {
  readonly params?: Record<string, string>;
  readonly query?: Record<string, string>;
  readonly body?: unknown;
}
type Answer<Name extends RouteName> = z.output<(typeof routes)[Name]['output']>;

const root = resolve(import.meta.dirname, '../..');

export function freePort(): Promise<number> {
  return new Promise((found, failed) => {
    const probe = createServer();
    probe.once('error', failed);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => found(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

export async function startServer(
  options: { folder?: string; args?: string[]; port?: number } = {},
): Promise<RunningServer> {
  const folder = options.folder ?? mkdtempSync(join(tmpdir(), 'gramwright-server-'));
  const port = options.port ?? (await freePort());
  const address = `http://127.0.0.1:${port}`;
  const child = spawn(
    process.execPath,
    [
      join(root, 'bin/gramwright'),
      'start',
      '--folder',
      folder,
      '--port',
      String(port),
      ...(options.args ?? []),
    ],
    { stdio: ['ignore', 'pipe', 'pipe'] },
  );
  const said: string[] = [];
  for (const stream of [child.stdout, child.stderr])
    stream?.on('data', (chunk: Buffer) => said.push(String(chunk)));
  await untilHealthy(address, child, said);
  const send = (name: RouteName, request: CallRequest = {}) =>
    fetch(address + pathOf(name, request), requestOf(name, request));
  return {
    address,
    folder,
    process: child,
    send,
    async call(name, request) {
      const response = await send(name, request);
      const body = await response.json();
      if (!response.ok) throw new Error(`${name}: ${response.status} ${JSON.stringify(body)}`);
      return routes[name].output.parse(body) as never;
    },
    kill: () => end(child, 'SIGKILL'),
    async stop() {
      await end(child, 'SIGTERM');
      if (options.folder === undefined) rmSync(folder, { recursive: true, force: true });
    },
  };
}

function pathOf(name: RouteName, { params = {}, query = {} }: CallRequest): string {
  const path = routes[name].path.replace(/:(\w+)/g, (_all, key: string) =>
    encodeURIComponent(params[key] ?? ''),
  );
  const search = new URLSearchParams(query).toString();
  return search === '' ? path : `${path}?${search}`;
}

const requestOf = (name: RouteName, { body }: CallRequest): RequestInit =>
  routes[name].method === 'GET'
    ? {}
    : {
        method: routes[name].method,
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body ?? {}),
      };

async function untilHealthy(address: string, child: ChildProcess, said: readonly string[]): Promise<void> {
  for (let tries = 0; tries < 1200; tries += 1) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}: ${said.join('')}`);
    const isUp = await fetch(`${address}/api/health`).then(
      (response) => response.ok,
      () => false,
    );
    if (isUp) return;
    await new Promise((resolved) => setTimeout(resolved, 50));
  }
  throw new Error(`the server did not answer: ${said.join('')}`);
}

function end(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((ended) => {
    child.once('exit', () => ended());
    child.kill(signal);
  });
}
