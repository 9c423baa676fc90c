import { execFileSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { connect, type TLSSocket } from 'node:tls';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { must } from '../core/problem.ts';
import { makeServerCertificate, SERVER_DAYS } from './certificates.ts';
import { type KeptCertificates, keepCertificates, namesIn, readAuthority } from './keep-certificates.ts';

const NOW = '2026-11-26T08:05:00.000Z';
const DAY_MS = 86_400_000;
const NAMES = { addresses: ['192.168.1.20', '10.0.0.5'], names: ['bench.local'] };
const root = mkdtempSync(join(tmpdir(), 'gramwright-certificates-'));
const folder = join(root, 'network');
let kept: KeptCertificates;

/** A folder with the same authority: making keys takes the longest. */
function copyOf(name: string): string {
  cpSync(folder, join(root, name), { recursive: true });
  return join(root, name);
}

const daysLater = (days: number): string => new Date(Date.parse(NOW) + days * DAY_MS).toISOString();
const keepFor = async (names = NAMES, now = NOW, where = folder) =>
  must(await keepCertificates(where, 'Test authority', names, now));
const daysOf = ({ validFrom, validTo }: X509Certificate): number =>
  (Date.parse(validTo) - Date.parse(validFrom)) / DAY_MS;

beforeAll(async () => {
  kept = await keepFor();
});
afterAll(() => rmSync(root, { recursive: true }));

describe('the authority', () => {
  it('signs itself, may sign others but no authority, and holds ten years', () => {
    const authority = new X509Certificate(kept.authority);
    expect(authority.ca).toBe(true);
    expect(authority.checkIssued(authority)).toBe(true);
    expect(authority.verify(authority.publicKey)).toBe(true);
    expect(daysOf(authority)).toBe(3653);
    expect(authority.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
    expect(authority.publicKey.asymmetricKeyDetails?.modulusLength).toBe(2048);
    expect(kept.isNewAuthority).toBe(true);
  });

  it('stays the same from then on', async () => {
    const again = await keepFor();
    expect(again).toEqual({ ...kept, isNewAuthority: false });
    expect(readAuthority(folder)?.trim()).toBe(kept.authority.trim());
  });
});

// Apple Support, 103769: RSA of 2048 bits, SHA-2, names as alternative names, serverAuth, 825 days at most.
describe('the certificate of this computer', () => {
  it('is as Apple’s devices ask for it', () => {
    const server = new X509Certificate(kept.server.certificate);
    expect(server.publicKey.asymmetricKeyDetails?.modulusLength).toBe(2048);
    expect(server.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
    expect(daysOf(server)).toBe(SERVER_DAYS);
    expect(SERVER_DAYS).toBeLessThanOrEqual(825);
    expect(server.ca).toBe(false);
    expect(server.checkIP('192.168.1.20')).toBe('192.168.1.20');
    expect(server.checkIP('192.168.1.21')).toBeUndefined();
    expect(server.checkHost('bench.local')).toBe('bench.local');
    expect(server.checkHost('other.local')).toBeUndefined();
    expect(server.checkIssued(new X509Certificate(kept.authority))).toBe(true);
    expect(namesIn(kept.server.certificate).sort()).toEqual(['10.0.0.5', '192.168.1.20', 'bench.local']);
  });

  it('is good from the day before, so that a clock that is behind takes it', () => {
    const { validFrom } = new X509Certificate(kept.server.certificate);
    expect(Date.parse(validFrom)).toBe(Date.parse(NOW) - DAY_MS);
  });

  it('is made anew thirty days before its end, not sooner', async () => {
    const where = copyOf('renewed');
    const first = await keepFor(NAMES, NOW, where);
    // It began a day before it was made.
    const stillGood = await keepFor(NAMES, daysLater(SERVER_DAYS - 1 - 31), where);
    expect(stillGood.server).toEqual(first.server);
    const renewed = await keepFor(NAMES, daysLater(SERVER_DAYS - 1 - 30), where);
    expect(renewed.server).not.toEqual(first.server);
    expect(renewed.authority).toBe(first.authority);
  });

  it('is made anew where an address came or went', async () => {
    const where = copyOf('moved');
    const first = await keepFor(NAMES, NOW, where);
    const moved = await keepFor({ ...NAMES, addresses: ['192.168.1.99'] }, NOW, where);
    expect(namesIn(moved.server.certificate).sort()).toEqual(['192.168.1.99', 'bench.local']);
    expect(moved.authority).toBe(first.authority);
    const nameless = await keepFor({ addresses: ['192.168.1.99'], names: [] }, NOW, where);
    expect(namesIn(nameless.server.certificate)).toEqual(['192.168.1.99']);
  });

  it('comes with a new authority once the old one is near its end', async () => {
    const where = copyOf('old');
    const first = await keepFor(NAMES, NOW, where);
    const later = await keepFor(NAMES, daysLater(3653 - 1 - 30), where);
    expect(later.isNewAuthority).toBe(true);
    expect(later.authority).not.toBe(first.authority);
    const server = new X509Certificate(later.server.certificate);
    expect(server.verify(new X509Certificate(later.authority).publicKey)).toBe(true);
  });
});

describe('on disk', () => {
  it('keys are for their owner alone, in a folder that nobody else opens', () => {
    expect(statSync(folder).mode & 0o777).toBe(0o700);
    for (const name of readdirSync(folder))
      expect(statSync(join(folder, name)).mode & 0o777, name).toBe(0o600);
    expect(readdirSync(folder).sort()).toEqual(['authority.pem', 'server.pem']);
  });

  it('a folder that was open is closed', async () => {
    const where = copyOf('open');
    await keepFor(NAMES, NOW, where);
    chmodSync(where, 0o755);
    await keepFor({ ...NAMES, names: [] }, NOW, where);
    expect(statSync(where).mode & 0o777).toBe(0o700);
  });

  it.each(['', 'not a key', 'half'])(
    'an authority that is damaged (%s) is said, and not replaced',
    async (what) => {
      const where = copyOf(`torn-${what.replaceAll(' ', '-')}`);
      const file = join(where, 'authority.pem');
      const text = what === 'half' ? readFileSync(file, 'utf8').slice(0, 900) : what;
      writeFileSync(file, text);
      const result = await keepCertificates(where, 'Test authority', NAMES, NOW);
      expect(result).toMatchObject({ ok: false, problems: [{ code: 'network-keys-torn', where: file }] });
      expect(readFileSync(file, 'utf8')).toBe(text);
      expect(readAuthority(where)).toBeNull();
    },
  );

  it('a damaged certificate of this computer is made anew, since nobody trusts it by itself', async () => {
    const where = copyOf('torn-server');
    const first = await keepFor(NAMES, NOW, where);
    writeFileSync(join(where, 'server.pem'), 'torn');
    const again = await keepFor(NAMES, NOW, where);
    expect(again.authority.trim()).toBe(first.authority.trim());
    expect(new X509Certificate(again.server.certificate).checkIP('10.0.0.5')).toBe('10.0.0.5');
  });
});

/** Shakes hands with a server that shows this certificate, trusting the authority alone. */
async function shakeHands(server: { certificate: string; key: string }, servername: string): Promise<string> {
  const listening = createServer({ cert: server.certificate, key: server.key });
  await new Promise<void>((ready) => listening.listen(0, '127.0.0.1', ready));
  const { port } = listening.address() as AddressInfo;
  const socket: TLSSocket = connect({
    port,
    host: '127.0.0.1',
    ca: [kept.authority],
    ...(/^[\d.]+$/.test(servername) ? { checkServerIdentity: checkIp(servername) } : { servername }),
  });
  const outcome = await new Promise<string>((told) => {
    socket.once('secureConnect', () =>
      told(socket.authorized ? 'trusted' : String(socket.authorizationError)),
    );
    socket.once('error', (error: NodeJS.ErrnoException) => told(`${error.code}: ${error.message}`));
  });
  socket.destroy();
  await new Promise((closed) => listening.close(closed));
  return outcome;
}

const checkIp =
  (address: string) =>
  (_host: string, { raw }: { raw: Buffer }) =>
    new X509Certificate(raw).checkIP(address) === undefined ? new Error('other address') : undefined;

// Node's TLS is OpenSSL: a party of its own, which builds and judges the chain (RFC 5280, section 6).
describe('a device that trusts the authority alone', () => {
  it('takes the certificate, by name and by address', async () => {
    // The certificate's day lies in the future of the machine that runs this.
    const now = await keepFor(NAMES, new Date().toISOString(), join(root, 'now'));
    kept = { ...kept, authority: now.authority };
    expect(await shakeHands(now.server, 'bench.local')).toBe('trusted');
    expect(await shakeHands(now.server, '192.168.1.20')).toBe('trusted');
    expect(await shakeHands(now.server, 'other.local')).toContain('ERR_TLS_CERT_ALTNAME_INVALID');
  });

  it('takes nothing from the authority for a name outside: a shop, a bank, a public address', async () => {
    const now = new Date().toISOString();
    const where = join(root, 'bad');
    const own = await keepFor(NAMES, now, where);
    kept = { ...kept, authority: own.authority };
    const [certificate, key] = (readFileSync(join(where, 'authority.pem'), 'utf8').match(
      /-----BEGIN [^-]+-----[^-]+-----END [^-]+-----/g,
    ) ?? []) as [string, string];
    const sign = (names: { addresses: string[]; names: string[] }) =>
      makeServerCertificate({ certificate, key }, names, now);
    const shop = await sign({ addresses: [], names: ['shop.example'] });
    expect(await shakeHands(shop, 'shop.example')).toContain('permitted subtree violation');
    const world = await sign({ addresses: ['203.0.113.7'], names: [] });
    expect(await shakeHands(world, '203.0.113.7')).toContain('permitted subtree violation');
    // Both ends of 172.16.0.0/12.
    const inside = await sign({ addresses: ['172.31.255.255'], names: ['x.local'] });
    expect(await shakeHands(inside, '172.31.255.255')).toBe('trusted');
    const beside = await sign({ addresses: ['172.32.0.0'], names: [] });
    expect(await shakeHands(beside, '172.32.0.0')).toContain('permitted subtree violation');
  });

  it('does not take the certificate of another workshop', async () => {
    const other = await keepFor(NAMES, new Date().toISOString(), join(root, 'other'));
    expect(await shakeHands(other.server, 'bench.local')).not.toBe('trusted');
  });
});

const hasOpenssl = (process.env.PATH ?? '')
  .split(delimiter)
  .some((each) => existsSync(join(each, 'openssl')));

/** The command's answer where the machine has it; where it has not, Node's own OpenSSL judged the chain above. */
describe(`the openssl command, ${hasOpenssl ? 'which is here' : 'which is not here: nothing more is asked'}`, () => {
  it('takes the chain for a web server', async () => {
    const now = await keepFor(NAMES, new Date().toISOString(), join(root, 'openssl'));
    const [authority, server] = [join(root, 'a.crt'), join(root, 's.crt')];
    writeFileSync(authority, now.authority);
    writeFileSync(server, now.server.certificate);
    const verify = (...more: string[]) =>
      execFileSync(
        'openssl',
        ['verify', '-x509_strict', '-purpose', 'sslserver', ...more, '-CAfile', authority, server],
        {
          encoding: 'utf8',
        },
      );
    const answer = hasOpenssl ? verify('-verify_ip', '192.168.1.20').trim() : `${server}: OK`;
    expect(answer).toBe(`${server}: OK`);
  });
});
