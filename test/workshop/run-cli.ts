import { type ChildProcess, type SpawnOptions, spawn } from 'node:child_process';
import { join, resolve } from 'node:path';

export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface CliOptions {
  readonly input?: string;
  readonly env?: Record<string, string>;
  readonly cwd?: string;
  /** Runs as another user; only root may ask for that. */
  readonly uid?: number;
}

const root = resolve(import.meta.dirname, '../..');

/** The built program, as it is installed. */
export function spawnCli(args: readonly string[], options: CliOptions = {}): ChildProcess {
  const { NODE_OPTIONS: _, ...env } = process.env;
  const settings: SpawnOptions = {
    cwd: options.cwd ?? root,
    env: { ...env, ...options.env },
    stdio: [options.input === undefined ? 'ignore' : 'pipe', 'pipe', 'pipe'],
    ...(options.uid !== undefined && { uid: options.uid, gid: options.uid }),
  };
  const child = spawn(process.execPath, [join(root, 'bin/gramwright'), ...args], settings);
  if (options.input !== undefined) child.stdin?.end(options.input);
  return child;
}

/** Runs one command to its end. */
export function runCli(args: readonly string[], options: CliOptions = {}): Promise<Ran> {
  const child = spawnCli(args, options);
  const said = { stdout: '', stderr: '' };
  child.stdout?.on('data', (chunk: Buffer) => {
    said.stdout += String(chunk);
  });
  child.stderr?.on('data', (chunk: Buffer) => {
    said.stderr += String(chunk);
  });
  return new Promise((ended, failed) => {
    child.once('error', failed);
    child.once('close', (status) => ended({ status, ...said }));
  });
}

/** Starts a server and waits until it told its address. */
export async function startCli(
  args: readonly string[],
  options: CliOptions = {},
): Promise<{ readonly child: ChildProcess; readonly address: string; readonly told: () => string }> {
  const child = spawnCli(['start', '--port', '0', ...args], options);
  let told = '';
  const address = await new Promise<string>((found, failed) => {
    for (const stream of [child.stdout, child.stderr]) {
      stream?.on('data', (chunk: Buffer) => {
        told += String(chunk);
        const match = /http:\/\/[\d.]+:\d+\n/.exec(told);
        if (match) found(match[0].trim());
      });
    }
    child.once('error', failed);
    child.once('close', (status) => failed(new Error(`ended with ${status}: ${told}`)));
  });
  return { child, address, told: () => told };
}

export function endCli(child: ChildProcess, signal: NodeJS.Signals = 'SIGTERM'): Promise<number | null> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve(child.exitCode);
  return new Promise((ended) => {
    child.once('close', (status) => ended(status));
    child.kill(signal);
  });
}
