import { createServer as createPlainServer, type Server } from 'node:http';
import { createServer, type Server as SecureServer } from 'node:https';
import type { Socket } from 'node:net';
import { createAdaptorServer } from '@hono/node-server';
import { done, type Problem, problem, type Result, refused } from '../core/problem.ts';
import {
  endOf,
  fingerprintOf,
  isNearAddress,
  type KeptCertificates,
  keepCertificates,
  keepNetworkChoice,
  type OwnAddresses,
  readAuthority,
  readNetworkChoice,
  readOwnAddresses,
  shortMark,
} from '../machine/index.ts';
import type { NetworkDoor, NetworkState, PairingDesk, WayIn } from '../work/index.ts';
import type { Gate } from './gate.ts';
import { answerHint } from './hint-page.ts';
import type { Log } from './log.ts';

export type Fetch = (request: Request, env?: object) => Response | Promise<Response>;

export interface NetworkDoorWish {
  /** Where the switch, keys and certificates are kept. */
  readonly folder: string;
  readonly now: () => string;
  /** For the days of certificates, which devices judge by their own clock: tests set the other one. */
  readonly today?: () => string;
  readonly pairing: PairingDesk;
  readonly log: Log;
  /** The application for devices, once the gate is there. */
  readonly appFor: (gate: Gate) => Fetch;
  /** Read anew each time; tests say their own. */
  readonly addresses?: () => OwnAddresses;
  /** The first port that is tried where devices know none yet. */
  readonly firstPort?: number;
}

/** All networks of this computer, by their IPv4 addresses. */
const EVERYWHERE = '0.0.0.0';
/** Ends like https and is known for nothing else. */
const FIRST_PORT = 4443;
const PORTS_TRIED = 20;
/** Wi-Fi comes and goes, routers give out other addresses: looked at so often, in milliseconds (common practice, no source). */
const LOOK_EVERY_MS = 60_000;
/** How long a request under way may still take after closing began, in milliseconds (common practice, no source). */
const GRACE_MS = 1000;

const REFUSED: Readonly<Record<string, string>> = {
  EADDRINUSE: 'network-port-taken',
  EACCES: 'network-port-not-allowed',
};

/** Stands in the certificate while there is no network: a certificate has to say some name. */
const NO_NETWORK: OwnAddresses = { addresses: [], name: 'gramwright.local' };

/** The second listener: https on the workshop's own network, turned on and off while the program runs. */
export class HttpsDoor implements NetworkDoor {
  readonly #wish: NetworkDoorWish;
  readonly #fetch: Fetch;
  readonly #sockets = new Map<string, Set<Socket>>();
  #server: SecureServer | null = null;
  #hint: Server | null = null;
  #hintTimer: NodeJS.Timeout | undefined;
  #lookTimer: NodeJS.Timeout | undefined;
  #trouble: Problem | null = null;
  #certificates: KeptCertificates | null = null;
  /** One look at the addresses at a time. */
  #looking: Promise<unknown> = Promise.resolve();

  constructor(wish: NetworkDoorWish) {
    this.#wish = wish;
    this.#fetch = wish.appFor({
      hosts: () => this.#ways().map(({ url }) => url.replace('https://', '')),
      noteSocket: (deviceId, socket) => this.#noteSocket(deviceId, socket),
    });
  }

  /** As the owner left it. A trouble is kept and said: the plain door of this computer works all the same. */
  async start({ isWanted, port }: { isWanted: boolean; port?: number | undefined }): Promise<void> {
    if (!isWanted && !readNetworkChoice(this.#wish.folder).isOn) return;
    const on = await this.turnOn(port);
    if (!on.ok) this.#trouble = on.problems[0] ?? null;
  }

  async view(): Promise<NetworkState> {
    if (this.#server !== null) await this.#look();
    const authority = readAuthority(this.#wish.folder);
    return {
      isOn: this.#server !== null,
      trouble: this.#trouble,
      port: this.#port() ?? readNetworkChoice(this.#wish.folder).port,
      ways: this.#server === null ? [] : this.#ways(),
      authority,
      fingerprint: authority === null ? null : fingerprintOf(authority),
      authorityUntil: authority === null ? null : endOf(authority),
      hint: this.#hintUrl(),
    };
  }

  async turnOn(port?: number): Promise<Result<unknown>> {
    if (this.#server !== null && (port === undefined || port === this.#port())) return done(null);
    const kept = await this.#keepCertificates();
    if (!kept.ok) return kept;
    const known = port ?? readNetworkChoice(this.#wish.folder).port;
    const server = known === null ? await this.#listenAnywhere() : await this.#listen(known);
    if (!server.ok) return server;
    // A door that works is closed only once the other one stands.
    await this.#close();
    this.#server = server.value;
    this.#trouble = null;
    keepNetworkChoice(this.#wish.folder, { isOn: true, port: this.#port() });
    this.#lookTimer = setInterval(() => void this.#lookSafely(), LOOK_EVERY_MS).unref();
    return done(null);
  }

  async turnOff(): Promise<void> {
    keepNetworkChoice(this.#wish.folder, { isOn: false, port: readNetworkChoice(this.#wish.folder).port });
    this.#trouble = null;
    await this.#close();
  }

  /** For the program's end: the switch stays as it is. */
  close(): Promise<void> {
    return this.#close();
  }

  async openHint(): Promise<void> {
    await this.closeHint();
    const port = this.#port();
    const until = this.#wish.pairing.current(this.#wish.now())?.until;
    if (port === null || until === undefined) return;
    for (let next = port + 1; next <= port + PORTS_TRIED && this.#hint === null; next += 1)
      this.#hint = await listenOn(this.#hintServer(), next).catch(() => null);
    const left = Date.parse(until) - Date.parse(this.#wish.now());
    this.#hintTimer = setTimeout(() => void this.closeHint(), left).unref();
  }

  async closeHint(): Promise<void> {
    clearTimeout(this.#hintTimer);
    const hint = this.#hint;
    this.#hint = null;
    if (hint !== null) await closeServer(hint);
  }

  hangUp(deviceId: string): void {
    for (const socket of this.#sockets.get(deviceId) ?? []) socket.destroy();
    this.#sockets.delete(deviceId);
  }

  async #close(): Promise<void> {
    clearInterval(this.#lookTimer);
    await this.closeHint();
    const server = this.#server;
    this.#server = null;
    if (server !== null) await closeServer(server);
  }

  #noteSocket(deviceId: string, socket: Socket): void {
    const sockets = this.#sockets.get(deviceId) ?? new Set();
    this.#sockets.set(deviceId, sockets);
    if (sockets.has(socket)) return;
    sockets.add(socket);
    socket.once('close', () => sockets.delete(socket));
  }

  #port(): number | null {
    return this.#server === null ? null : portOf(this.#server);
  }

  #hintUrl(): string | null {
    const [first] = this.#ways();
    return this.#hint === null || first === undefined
      ? null
      : `http://${first.address}:${portOf(this.#hint)}`;
  }

  #ownAddresses(): OwnAddresses {
    return (this.#wish.addresses ?? readOwnAddresses)();
  }

  #ways(): WayIn[] {
    const port = this.#port();
    const { addresses, name } = this.#ownAddresses();
    const wayIn = (address: string, kind: WayIn['kind']): WayIn => ({
      address,
      url: `https://${address}:${port}`,
      kind,
    });
    // A name alone leads nowhere while there is no network.
    const names = name === null || addresses.length === 0 ? [] : [wayIn(name, 'name')];
    return [...addresses.map((address) => wayIn(address, 'number')), ...names];
  }

  #keepCertificates(): Promise<Result<KeptCertificates>> {
    const { folder, now } = this.#wish;
    const today = (this.#wish.today ?? now)();
    const own = this.#ownAddresses();
    const { addresses, name } = own.addresses.length === 0 && own.name === null ? NO_NETWORK : own;
    const names = name === null ? [] : [name];
    const kept = this.#looking.then(async () => {
      const subject = `Gramwright workshop ${shortMark(`${folder} ${today}`)}`;
      const certificates = await keepCertificates(folder, subject, { addresses, names }, today);
      if (certificates.ok) this.#certificates = certificates.value;
      return certificates;
    });
    this.#looking = kept.catch(() => undefined);
    return kept;
  }

  /** Shows a certificate for the addresses of this moment, to whoever connects from now on. */
  async #look(): Promise<void> {
    const before = this.#certificates?.server.certificate;
    const kept = await this.#keepCertificates();
    this.#trouble = kept.ok ? null : (kept.problems[0] ?? null);
    if (!kept.ok || this.#server === null || kept.value.server.certificate === before) return;
    const { certificate, key } = kept.value.server;
    this.#server.setSecureContext({ cert: certificate, key, minVersion: 'TLSv1.2' });
  }

  async #lookSafely(): Promise<void> {
    try {
      await this.#look();
    } catch (error) {
      this.#wish.log.error({ err: error }, 'the certificate for the network');
    }
  }

  #newServer(): SecureServer {
    const kept = this.#certificates;
    if (kept === null) throw new Error('certificates are kept before anybody is answered');
    const { certificate, key } = kept.server;
    const server = createAdaptorServer({
      fetch: this.#fetch as Parameters<typeof createAdaptorServer>[0]['fetch'],
      createServer,
      serverOptions: { cert: certificate, key, minVersion: 'TLSv1.2' },
    }) as SecureServer;
    return refuseFarAway(server);
  }

  #hintServer(): Server {
    const { folder, now, pairing } = this.#wish;
    const fetch = (request: Request): Response => {
      const authority = pairing.current(now()) === null ? null : readAuthority(folder);
      return answerHint(request, authority, this.#ways());
    };
    return refuseFarAway(createAdaptorServer({ fetch, createServer: createPlainServer }) as Server);
  }

  async #listen(port: number): Promise<Result<SecureServer>> {
    try {
      return done(await listenOn(this.#newServer(), port));
    } catch (error) {
      const code = REFUSED[error instanceof Error && 'code' in error ? String(error.code) : ''];
      if (code === undefined) throw error;
      return refused(problem(code, 'port', { found: String(port), allowed: String(port + 1) }));
    }
  }

  async #listenAnywhere(): Promise<Result<SecureServer>> {
    const first = this.#wish.firstPort ?? FIRST_PORT;
    for (let port = first; port < first + PORTS_TRIED; port += 1) {
      const server = await this.#listen(port);
      if (server.ok || server.problems[0]?.code !== 'network-port-taken') return server;
    }
    return this.#listen(first + PORTS_TRIED);
  }
}

/** Nobody from beyond the private networks is answered, wherever this computer is plugged in. */
function refuseFarAway<S extends Server | SecureServer>(server: S): S {
  server.on('connection', (socket: Socket) => {
    if (!isNearAddress(socket.remoteAddress)) socket.destroy();
  });
  return server;
}

const listenOn = <S extends Server | SecureServer>(server: S, port: number): Promise<S> =>
  new Promise((listening, failed) => {
    server.once('error', failed);
    server.listen(port, EVERYWHERE, () => {
      server.off('error', failed);
      listening(server);
    });
  });

const closeServer = (server: Server | SecureServer): Promise<void> =>
  new Promise((closed) => {
    const grace = setTimeout(() => server.closeAllConnections(), GRACE_MS);
    server.close(() => {
      clearTimeout(grace);
      closed();
    });
    server.closeIdleConnections();
  });

function portOf(server: Server | SecureServer): number {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('a server listens on a port');
  return address.port;
}
