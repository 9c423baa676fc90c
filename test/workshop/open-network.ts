import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import type { IncomingHttpHeaders } from 'node:http';
import { Agent, request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { must } from '../../src/core/problem.ts';
import { keepCertificates, type OwnAddresses } from '../../src/machine/index.ts';
import { createApp, makeNetwork } from '../../src/server/index.ts';
import type { Context } from '../../src/work/index.ts';
import { useCases } from '../../src/work/index.ts';
import { openTestWorkshop, type TestOptions, type TestWorkshop } from './open-test-workshop.ts';

/** What came back over the wire. */
export interface Answered {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
  readonly json: unknown;
}

export interface Sent {
  readonly method?: string;
  readonly body?: unknown;
  readonly cookie?: string;
  readonly headers?: Readonly<Record<string, string>>;
  /** Keeps its connection, and uses it again. */
  readonly agent?: Agent;
}

/** A workshop whose network is on, at an address that tests may change, and somebody who asks from there. */
export interface TestNetwork {
  readonly bench: TestWorkshop;
  /** As a request at the workshop's own computer sees it. */
  readonly context: Context;
  readonly folder: string;
  readonly network: ReturnType<typeof makeNetwork>;
  /** Where this computer stands in its networks. */
  own: OwnAddresses;
  /** From the network, over https, trusting the workshop's authority alone. */
  ask(path: string, sent?: Sent): Promise<Answered>;
  /** At the workshop's own computer. */
  atHome(path: string, sent?: Sent): Promise<Answered>;
  /** A stamped write at the workshop's own computer, which has to succeed. */
  write(path: string, body?: object, method?: string): Promise<unknown>;
  code(): Promise<string>;
  /** A new device, by its cookie. */
  pair(name: string): Promise<{ readonly id: string; readonly cookie: string }>;
  port(): number;
  close(): Promise<void>;
}

const HOME = 'http://127.0.0.1:4716';
const QUIET = { warn: () => undefined, error: () => undefined };

const OWN: OwnAddresses = { addresses: ['192.168.7.20'], name: 'bench.local' };
/** Certificates are judged by the clock of the machine that runs the test. */
const today = () => new Date().toISOString();

/** Keys take the longest to make: once for all tests of a process. */
let keysMade: Promise<string> | undefined;
async function makeKeys(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-keys-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  must(
    await keepCertificates(
      folder,
      'Test authority',
      { addresses: OWN.addresses, names: ['bench.local'] },
      today(),
    ),
  );
  return folder;
}

export async function openNetwork(
  options: TestOptions & { readonly firstPort?: number } = {},
): Promise<TestNetwork> {
  const bench = await openTestWorkshop(options);
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-network-'));
  keysMade ??= makeKeys();
  cpSync(await keysMade, join(folder, 'network'), { recursive: true });
  const parts = { useCases, version: '1', webFolder: join(folder, 'no-pages'), log: QUIET };
  const network = makeNetwork({
    ...parts,
    context: bench.context,
    folder: join(folder, 'network'),
    addresses: () => made.own,
    today,
    firstPort: options.firstPort ?? 4810,
  });
  const context: Context = { ...bench.context, network };
  const home = createApp({ ...parts, context, port: () => 4716 });
  const made: TestNetwork = {
    bench,
    context,
    folder: join(folder, 'network'),
    network,
    own: OWN,
    ask: (path, sent) => askOverHttps(made, path, sent),
    async atHome(path, { method = 'GET', body, headers = {} } = {}) {
      const response = await home.request(HOME + path, {
        method,
        headers: {
          host: '127.0.0.1:4716',
          ...(body === undefined ? {} : { 'content-type': 'application/json' }),
          ...headers,
        },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      return answered(response.status, Object.fromEntries(response.headers), await response.text());
    },
    async write(path, body = {}, method = 'POST') {
      const answer = await made.atHome(path, { method, body: { stamp: bench.stamp(), ...body } });
      if (answer.status >= 300) throw new Error(`${path}: ${answer.status} ${answer.text}`);
      return answer.json;
    },
    async code() {
      await made.write('/api/reach/pairing');
      return network.pairing.current(bench.now())?.code ?? '';
    },
    async pair(name) {
      const body = { code: await made.code(), name };
      const answer = await made.ask('/api/reach/pair', { method: 'POST', body });
      if (answer.status !== 201) throw new Error(`not paired: ${answer.text}`);
      const [cookie = ''] = (answer.headers['set-cookie'] ?? [''])[0]?.split(';') ?? [];
      return { id: (answer.json as { id: string }).id, cookie };
    },
    port: () => Number(new URL(ownUrl()).port),
    async close() {
      await network.door.close();
      await bench.close();
      rmSync(folder, { recursive: true });
    },
  };
  let known = '';
  const ownUrl = () => known;
  must(await network.door.turnOn());
  known = (await network.door.view()).ways[0]?.url ?? '';
  return made;
}

const answered = (status: number, headers: IncomingHttpHeaders, text: string): Answered => ({
  status,
  headers,
  text,
  get json() {
    return JSON.parse(text) as unknown;
  },
});

async function askOverHttps(
  { network, port }: TestNetwork,
  path: string,
  { method = 'GET', body, cookie, headers = {}, agent }: Sent = {},
): Promise<Answered> {
  const { authority } = await network.door.view();
  const isText = typeof body === 'string';
  return new Promise((answer, failed) => {
    const asking = request(
      {
        host: '127.0.0.1',
        port: port(),
        path,
        method,
        servername: 'bench.local',
        ca: authority ?? '',
        agent: agent ?? new Agent(),
        headers: {
          host: `bench.local:${port()}`,
          ...(body === undefined ? {} : { 'content-type': 'application/json' }),
          ...(cookie === undefined ? {} : { cookie }),
          ...headers,
        },
      },
      (response) => {
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (chunk: string) => {
          text += chunk;
        });
        response.once('end', () => answer(answered(response.statusCode ?? 0, response.headers, text)));
        response.once('error', failed);
      },
    );
    asking.once('error', failed);
    asking.end(body === undefined ? undefined : isText ? body : JSON.stringify(body));
  });
}

/** The codes of a refusal. */
export const codesIn = ({ json }: Answered): string[] =>
  (json as { problems?: { code: string }[] }).problems?.map(({ code }) => code) ?? [];
