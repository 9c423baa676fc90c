import { X509Certificate } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { connect } from 'node:tls';
import { afterEach, describe, expect, it } from 'vitest';
import { codesIn, openNetwork, type TestNetwork } from '../../test/workshop/open-network.ts';
import { must } from '../core/problem.ts';
import { namesIn, readNetworkChoice } from '../machine/index.ts';
import { useCases } from '../work/index.ts';
import { makeNetwork } from './make-network.ts';

let shop: TestNetwork;
afterEach(() => shop.close());

/** The certificate that is shown to whoever connects now. */
const shown = (port: number): Promise<string> =>
  new Promise((found, failed) => {
    const socket = connect({ port, host: '127.0.0.1', servername: 'bench.local', rejectUnauthorized: false });
    socket.once('secureConnect', () => {
      found(new X509Certificate(socket.getPeerCertificate().raw).toString());
      socket.destroy();
    });
    socket.once('error', failed);
  });

const isListening = (port: number): Promise<boolean> =>
  shown(port).then(
    () => true,
    () => false,
  );

describe('the door to the network', () => {
  it('answers over https with a certificate that the authority signed, and with no other trust', async () => {
    shop = await openNetwork();
    const { status, json } = await shop.ask('/api/reach/door');
    expect(status).toBe(200);
    expect(json).toEqual({ door: 'network', device: null, isPairingOpen: false, people: [] });
    const { authority, fingerprint, ways } = await shop.network.door.view();
    expect(
      new X509Certificate(await shown(shop.port())).verify(new X509Certificate(authority ?? '').publicKey),
    ).toBe(true);
    expect(fingerprint).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/);
    expect(ways.map(({ url }) => url)).toEqual([
      `https://192.168.7.20:${shop.port()}`,
      `https://bench.local:${shop.port()}`,
    ]);
  });

  it('is turned off and on while the program runs, by the same port, with the same authority', async () => {
    shop = await openNetwork();
    const { fingerprint, port } = await shop.network.door.view();
    await shop.write('/api/reach/switch', { isOn: false });
    expect(await isListening(port ?? 0)).toBe(false);
    expect(await shop.network.door.view()).toMatchObject({ isOn: false, port, ways: [] });
    const on = (await shop.write('/api/reach/switch', { isOn: true })) as { network: object };
    expect(on.network).toMatchObject({ isOn: true, port, fingerprint, trouble: null });
    expect((await shop.ask('/api/reach/door')).status).toBe(200);
  });

  it('tells the chain who turned it, and keeps the switch out of the file', async () => {
    shop = await openNetwork();
    await shop.write('/api/reach/switch', { isOn: false });
    const entry = shop.bench.context.storage.handle
      .prepare('select kind, person_id from entry order by seq desc limit 1')
      .get();
    expect(entry).toEqual({ kind: 'network-closed', person_id: shop.bench.people.first });
    expect(readNetworkChoice(shop.folder)).toEqual({ isOn: false, port: shop.port() });
  });

  it('opens by itself at the next start where it was left on, and stays shut where it was off or never on', async () => {
    shop = await openNetwork();
    const again = () =>
      makeNetwork({
        context: shop.bench.context,
        useCases,
        version: '1',
        webFolder: 'none',
        log: { warn: () => undefined, error: () => undefined },
        folder: shop.folder,
        addresses: () => shop.own,
        today: () => new Date().toISOString(),
      });
    await shop.network.door.close();
    const left = again();
    await left.door.start({ isWanted: false });
    expect(await isListening(shop.port())).toBe(true);
    await left.door.turnOff();
    const off = again();
    await off.door.start({ isWanted: false });
    expect((await off.door.view()).isOn).toBe(false);
    await off.door.start({ isWanted: true });
    expect(await isListening(shop.port())).toBe(true);
    await off.door.close();
  });

  it('takes the next free port the first time, and afterwards no other: devices know it by that', async () => {
    const blocked = createServer();
    const port = await new Promise<number>((found) => {
      blocked.listen(0, '0.0.0.0', () => found((blocked.address() as { port: number }).port));
    });
    shop = await openNetwork({ firstPort: port });
    expect(shop.port()).toBeGreaterThan(port);
    await new Promise((closed) => blocked.close(closed));
    const own = shop.port();
    await shop.network.door.turnOff();
    const taker = createServer();
    await new Promise<void>((ready) => taker.listen(own, '0.0.0.0', ready));
    const refusal = await shop.atHome('/api/reach/switch', {
      method: 'POST',
      body: { stamp: shop.bench.stamp(), isOn: true },
    });
    expect(refusal.status).toBe(422);
    expect(codesIn(refusal)).toEqual(['network-port-taken']);
    await shop.network.door.start({ isWanted: true });
    expect((await shop.network.door.view()).trouble).toMatchObject({
      code: 'network-port-taken',
      found: String(own),
    });
    await new Promise((closed) => taker.close(closed));
    must(await shop.network.door.turnOn());
    const busy = createServer();
    const taken = await new Promise<number>((found) => {
      busy.listen(0, '0.0.0.0', () => found((busy.address() as { port: number }).port));
    });
    expect(await shop.network.door.turnOn(taken)).toMatchObject({ ok: false });
    expect(await isListening(own), 'the door that works stays open').toBe(true);
    await new Promise((closed) => busy.close(closed));
    expect((await shop.network.door.view()).trouble).toBeNull();
  });

  it('shows a certificate for the new address without a restart once the address changed', async () => {
    shop = await openNetwork();
    const before = await shown(shop.port());
    shop.own = { addresses: ['10.4.5.6'], name: 'bench.local' };
    await shop.network.door.view();
    const after = await shown(shop.port());
    expect(namesIn(before)).toContain('192.168.7.20');
    expect(namesIn(after).sort()).toEqual(['10.4.5.6', 'bench.local']);
    const headers = (address: string) => ({ headers: { host: `${address}:${shop.port()}` } });
    expect((await shop.ask('/api/reach/door', headers('10.4.5.6'))).status).toBe(200);
    expect((await shop.ask('/api/reach/door', headers('192.168.7.20'))).status).toBe(403);
  });

  it('says that there is no address while there is no network, and works once there is', async () => {
    shop = await openNetwork();
    shop.own = { addresses: [], name: null };
    expect(await shop.network.door.view()).toMatchObject({ isOn: true, ways: [], trouble: null });
    shop.own = { addresses: ['10.4.5.6'], name: 'bench.local' };
    expect((await shop.network.door.view()).ways).toHaveLength(2);
    expect((await shop.ask('/api/reach/door')).status).toBe(200);
  });

  it('leaves nothing of its keys in an export, nor in the workshop’s file', async () => {
    shop = await openNetwork();
    const secret = readFileSync(join(shop.folder, 'authority.pem'), 'utf8').slice(-400, -100);
    const all = (await shop.atHome('/api/export.json')).text;
    expect(all).not.toContain(secret);
    expect(all).not.toContain('PRIVATE KEY');
    expect(readdirSync(shop.folder).sort()).toEqual(['authority.pem', 'network.json', 'server.pem']);
  });
});

describe('the authority’s certificate', () => {
  it('is given to a device that is not paired yet, with its own type', async () => {
    shop = await openNetwork();
    for (const answer of [
      await shop.ask('/api/reach/authority.crt'),
      await shop.atHome('/api/reach/authority.crt'),
    ]) {
      expect(answer.headers['content-type']).toBe('application/x-x509-ca-cert');
      const { fingerprint256, ca } = new X509Certificate(answer.text);
      expect(ca).toBe(true);
      expect(fingerprint256).toBe((await shop.network.door.view()).fingerprint);
      expect(answer.text).not.toContain('PRIVATE');
    }
  });
});

describe('the hint page, over plain http', () => {
  const hint = async (path: string, init: RequestInit = {}, host?: string) => {
    const { hint: address } = await shop.network.door.view();
    const { port } = new URL(address ?? '');
    const { request } = await import('node:http');
    return new Promise<{ status: number; type: string; text: string; policy: string }>((found, failed) => {
      request(
        {
          host: '127.0.0.1',
          port,
          path,
          method: init.method ?? 'GET',
          headers: { host: host ?? `192.168.7.20:${port}` },
        },
        (response) => {
          let text = '';
          response.on('data', (chunk) => {
            text += String(chunk);
          });
          response.once('end', () =>
            found({
              status: response.statusCode ?? 0,
              type: response.headers['content-type'] ?? '',
              text,
              policy: String(response.headers['content-security-policy']),
            }),
          );
        },
      )
        .once('error', failed)
        .end();
    });
  };

  it('gives certificate, fingerprint and guide while a pairing is open, and nothing else', async () => {
    shop = await openNetwork();
    expect((await shop.network.door.view()).hint).toBeNull();
    await shop.code();
    const { fingerprint, authority } = await shop.network.door.view();
    const page = await hint('/');
    expect(page).toMatchObject({ status: 200, type: 'text/html; charset=utf-8' });
    expect(page.text).toContain(fingerprint);
    expect(page.text).toContain('iPad or iPhone');
    expect(page.policy).toContain("default-src 'none'");
    const file = await hint('/authority.crt');
    expect(file).toMatchObject({ status: 200, type: 'application/x-x509-ca-cert' });
    expect(file.text).toBe(authority);
    for (const path of [
      '/api/workshop',
      '/api/reach/door',
      '/api/reach/pair',
      '/pair',
      '/index.html',
      '/../network.json',
    ])
      expect((await hint(path)).status, path).toBe(404);
    expect((await hint('/', { method: 'POST' })).status).toBe(404);
    expect((await hint('/', {}, 'evil.example')).status).toBe(404);
    expect(page.text).not.toContain('Test Bench');
  });

  it('ends with the pairing: paired, closed, or over', async () => {
    shop = await openNetwork();
    await shop.pair('Tablet');
    expect((await shop.network.door.view()).hint).toBeNull();
    await shop.code();
    expect((await hint('/')).status).toBe(200);
    shop.bench.setClock('2026-11-26T08:15:00Z');
    expect((await hint('/')).status).toBe(404);
    await shop.code();
    await shop.write('/api/reach/pairing/close');
    expect((await shop.network.door.view()).hint).toBeNull();
  });
});
