import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { hostname } from 'node:os';

/** A machine other than the server's, as real as this one allows. */
export interface SecondMachine {
  /** What it is, for the test that uses it to say. */
  readonly how: string;
  /** By what it reaches the server: an address of the server's, or its name. */
  readonly host: string;
  /** Where the name leads; the host itself where it is an address. */
  readonly leadsTo: string;
  /** Runs a script of Node on it; what it printed. */
  run(script: string, args: readonly string[]): Promise<string>;
  close(): void;
}

const ip = (...args: string[]): void => {
  execFileSync('ip', args, { stdio: 'pipe' });
};

/** One after the other of a test run; no other program uses this part of 10.0.0.0/8 by a name like ours. */
const SERVER = '10.77.31.1';
const CLIENT = '10.77.31.2';

/**
 * A network namespace of its own, joined to this machine by a pair of virtual cables: another machine's network as the
 * kernel sees it. Only root may make one. Where that is not allowed: a second address of this computer, by its name.
 */
export function openSecondMachine(): SecondMachine {
  return openNamespace() ?? openSecondAddress();
}

function openNamespace(): SecondMachine | null {
  const name = `gw${process.pid}`;
  const [here, there] = [`${name}a`, `${name}b`];
  const close = (): void => {
    spawnSync('ip', ['link', 'del', here]);
    spawnSync('ip', ['netns', 'del', name]);
  };
  try {
    ip('netns', 'add', name);
    ip('link', 'add', here, 'type', 'veth', 'peer', 'name', there);
    ip('link', 'set', there, 'netns', name);
    ip('addr', 'add', `${SERVER}/24`, 'dev', here);
    ip('link', 'set', here, 'up');
    ip('netns', 'exec', name, 'ip', 'addr', 'add', `${CLIENT}/24`, 'dev', there);
    ip('netns', 'exec', name, 'ip', 'link', 'set', there, 'up');
  } catch (error) {
    close();
    console.log(`no network namespace here: ${String(error).split('\n')[0]}`);
    return null;
  }
  return {
    how: `a network namespace of its own, ${CLIENT} asking ${SERVER}`,
    host: SERVER,
    leadsTo: SERVER,
    run: (script, args) => runNode(['ip', 'netns', 'exec', name, process.execPath], script, args),
    close,
  };
}

function openSecondAddress(): SecondMachine {
  const label = hostname().toLowerCase().split('.')[0] ?? '';
  const host = `${label}.local`;
  return {
    how: `no namespace allowed: the second address 127.0.0.2 of this computer, by its name ${host}`,
    host,
    leadsTo: '127.0.0.2',
    run: (script, args) => runNode([process.execPath], script, args),
    close: () => undefined,
  };
}

function runNode(
  [program = '', ...first]: string[],
  script: string,
  args: readonly string[],
): Promise<string> {
  const child = spawn(program, [...first, '--input-type=module', '-e', script, '--', ...args], {
    env: { PATH: process.env.PATH ?? '' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const said = { out: '', wrong: '' };
  child.stdout.on('data', (chunk: Buffer) => {
    said.out += String(chunk);
  });
  child.stderr.on('data', (chunk: Buffer) => {
    said.wrong += String(chunk);
  });
  return new Promise((ended, failed) => {
    child.once('error', failed);
    child.once('close', (status) =>
      status === 0 ? ended(said.out) : failed(new Error(`ended with ${status}: ${said.wrong}`)),
    );
  });
}
