import { createHash, X509Certificate } from 'node:crypto';
import { connect } from 'node:tls';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { openBrowser } from '../workshop/open-browser.ts';
import { openSecondMachine, type SecondMachine } from '../workshop/second-machine.ts';
import { stampBy } from '../workshop/stamp.ts';
import { freePort, type RunningServer, startServer } from '../workshop/start-server.ts';

const PIN = '4821';
const machine = openSecondMachine();

/** What a device does that was never here before; it knows the authority, the address and the code. */
const DEVICE = `
import { request } from 'node:https';
import { connect } from 'node:net';
const [host, leadsTo, port, plainPort, ca, code, person] = process.argv.slice(1).filter((arg) => arg !== '--');
const ask = (path, { method = 'GET', body, cookie, trusted = [ca] } = {}) =>
  new Promise((answer) => {
    const asking = request(
      {
        host: leadsTo, port, path, method, ca: trusted,
        ...(leadsTo === host ? {} : { servername: host }),
        headers: {
          host: host + ':' + port,
          ...(body === undefined ? {} : { 'content-type': 'application/json' }),
          ...(cookie === undefined ? {} : { cookie }),
        },
      },
      (response) => {
        let text = '';
        response.on('data', (chunk) => { text += chunk; });
        response.once('end', () => answer({ status: response.statusCode, cookie: response.headers['set-cookie']?.[0], text }));
      },
    );
    asking.once('error', (error) => answer({ error: error.code }));
    asking.end(body === undefined ? undefined : JSON.stringify(body));
  });
const stamp = (id) => ({ id, at: new Date().toISOString(), by: person, device: 'made up' });
const plain = await new Promise((told) => {
  const socket = connect({ host: leadsTo, port: Number(plainPort) });
  socket.once('connect', () => { socket.destroy(); told('answered'); });
  socket.once('error', (error) => told(error.code));
});
const untrusted = await ask('/api/reach/door', { trusted: [] });
const stranger = await ask('/api/workshop');
const paired = await ask('/api/reach/pair', { method: 'POST', body: { code, name: 'Second machine' } });
const cookie = (paired.cookie ?? '').split(';')[0];
const read = await ask('/api/workshop', { cookie });
const place = { stamp: stamp('from-there-1'), name: 'From over there', kind: 'shelf' };
const locked = await ask('/api/places', { method: 'POST', body: place, cookie });
const unlocked = await ask('/api/reach/unlock', { method: 'POST', body: { stamp: stamp('from-there-2'), pin: '${PIN}' }, cookie });
const written = await ask('/api/places', { method: 'POST', body: place, cookie });
console.log(JSON.stringify({
  plain, untrusted, stranger: stranger.status, paired: paired.status, read: read.status,
  locked: locked.status, unlocked: unlocked.status, written: written.status, cookie,
}));
`;

describe(`from another machine (${machine.how})`, () => {
  let server: RunningServer;
  let person: { readonly id: string; readonly name: string };
  let port = 0;
  let authority = '';

  beforeAll(async () => {
    port = await freePort();
    server = await startServer({ args: ['--example', '--network-port', String(port)] });
    const first = (await server.call('getWorkshop')).people[0];
    if (!first) throw new Error('the example has people');
    person = first;
    // The plain door answers while keys are still being made for the other.
    const isOn = async () => (await server.call('getReach')).network?.isOn;
    await vi.waitUntil(isOn, { timeout: 60_000, interval: 200 });
    authority = await (await server.send('getAuthority')).text();
    await server.call('setPin', { params: { id: person.id }, body: { stamp: stampBy(person.id), pin: PIN } });
  });
  afterAll(async () => {
    await server?.stop();
    machine.close();
  });

  const codeNow = async (): Promise<string> => {
    const { network } = await server.call('openPairing', { body: { stamp: stampBy(person.id) } });
    return network?.pairing?.code ?? '';
  };
  const dropAll = async (): Promise<void> => {
    for (const { id, version } of (await server.call('getReach')).devices)
      await server.call('dropDevice', { params: { id }, body: { stamp: stampBy(person.id), version } });
  };

  it('a device pairs, unlocks a person and writes over https, with no trust but the authority', async () => {
    const { port: plainPort } = new URL(server.address);
    const args = [
      machine.host,
      machine.leadsTo,
      String(port),
      plainPort,
      authority,
      await codeNow(),
      person.id,
    ];
    const told = JSON.parse(await machine.run(DEVICE, args)) as Record<string, unknown>;
    expect(told).toMatchObject({
      // The plain door is not there for another machine.
      plain: 'ECONNREFUSED',
      untrusted: { error: 'UNABLE_TO_VERIFY_LEAF_SIGNATURE' },
      stranger: 401,
      paired: 201,
      read: 200,
      locked: 401,
      unlocked: 201,
      written: 201,
    });
    const { places } = await server.call('getWorkshop');
    expect(places.map(({ name }) => name)).toContain('From over there');
    const { devices } = await server.call('getReach');
    expect(devices).toMatchObject([{ name: 'Second machine', unlocked: [{ id: person.id }] }]);
    await dropAll();
  });

  describe('a tablet’s browser, which takes this certificate by the hash of its key', () => {
    let browser: Browser;
    beforeAll(async () => {
      const resolver =
        machine.host === machine.leadsTo
          ? []
          : [`--host-resolver-rules=MAP ${machine.host} ${machine.leadsTo}`];
      const hash = await hashOfKey(machine, port, authority);
      browser = await openBrowser([`--ignore-certificate-errors-spki-list=${hash}`, ...resolver]);
    });
    afterAll(() => browser?.close());

    it('pairs, says by PIN who works, weighs one thing, and is out once it is dropped', async () => {
      const batch = await startAny(server, person.id);
      const address = `https://${machine.host}:${port}`;
      const context = await browser.newContext({
        locale: 'en-GB',
        timezoneId: 'Europe/London',
        viewport: { width: 820, height: 1180 },
        hasTouch: true,
      });
      const page = await context.newPage();
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      await pairPage(page, address, await codeNow());
      await choosePerson(page, person.name);
      expect(await page.evaluate('window.isSecureContext')).toBe(true);
      expect(await page.evaluate('document.cookie')).toBe('');
      await page.goto(`${address}/making/${batch}`);
      await weighFirst(page, await targetOf(batch));
      await expect.poll(() => weighedBy(batch), { timeout: 20_000 }).toEqual([person.name, 'Bench tablet']);
      await dropAll();
      await page.goto(`${address}/making/${batch}`);
      await page.getByText('This device is not paired with the workshop yet').waitFor();
      expect(errors).toEqual([]);
      await context.close();
    }, 300_000);
  });

  async function targetOf(batch: string): Promise<string> {
    const [screen] = (await server.call('getBatch', { params: { id: batch } })).screens;
    if (screen?.kind !== 'addition') throw new Error('the batch does not begin with a weighing');
    return screen.targetGrams;
  }

  /** Who weighed the first thing, and on which device the chain says that it was. */
  async function weighedBy(batch: string): Promise<(string | undefined)[]> {
    const [screen] = (await server.call('getBatch', { params: { id: batch } })).screens;
    if (screen?.kind !== 'addition' || screen.done === null) return [];
    const { tables } = (await (await server.send('exportJson')).json()) as {
      tables: { entry: { id: string; device: string }[] };
    };
    const { entryId, by } = screen.done;
    return [by, tables.entry.find(({ id }) => id === entryId)?.device];
  }
});

/** SHA-256 of the public key that the server shows (RFC 7469, 2.4), once Node has judged its certificate by the authority. */
const hashOfKey = ({ host, leadsTo }: SecondMachine, port: number, ca: string): Promise<string> =>
  new Promise((found, failed) => {
    const socket = connect(
      { host: leadsTo, port, ca: [ca], ...(host === leadsTo ? {} : { servername: host }) },
      () => {
        const key = new X509Certificate(socket.getPeerCertificate().raw).publicKey;
        socket.destroy();
        found(
          createHash('sha256')
            .update(key.export({ type: 'spki', format: 'der' }))
            .digest('base64'),
        );
      },
    );
    socket.once('error', failed);
  });

/** WCAG 2.2 A and AA, as axe sees them. */
async function expectNoBarrier(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
}

async function pairPage(page: Page, address: string, code: string): Promise<void> {
  await page.goto(address);
  await page.getByLabel('Code, eight digits').waitFor();
  await expectNoBarrier(page);
  await page.getByLabel('Code, eight digits').fill(code);
  await page.getByLabel('Name for this device').fill('Bench tablet');
  await page.getByRole('button', { name: 'Pair it' }).tap();
}

async function choosePerson(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Who is working?' }).tap();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name, exact: true }).tap();
  const type = async (digits: string) => {
    for (const digit of digits) {
      const key = dialog.getByRole('button', { name: digit, exact: true });
      const box = await key.boundingBox();
      expect(box?.height ?? 0).toBeGreaterThanOrEqual(64);
      await key.tap();
    }
    await dialog.getByRole('button', { name: 'That is me' }).tap();
  };
  await dialog.getByLabel('PIN', { exact: true }).waitFor();
  await expectNoBarrier(page);
  await type('0912');
  await dialog.getByText('This is not the PIN').first().waitFor();
  await type(PIN);
  await dialog.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: `Working: ${name}` }).waitFor();
}

async function weighFirst(page: Page, grams: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Grams on the scale' }).fill(grams);
  await page.getByRole('button', { name: /^Done:/ }).tap();
}

/** Whichever mixture of the example can be started as a trial now. */
async function startAny(server: RunningServer, person: string): Promise<string> {
  for (const formula of await server.call('listFormulas')) {
    const wish = {
      revisionId: formula.latest?.id,
      purpose: 'trial',
      markets: ['GB'],
      size: { by: 'grams', grams: '100' },
    };
    const started = await server.send('startBatch', { body: { stamp: stampBy(person), wish } });
    const batch = (await started.json()) as { id?: string; screens?: { kind: string }[] };
    if (started.ok && batch.id !== undefined && batch.screens?.[0]?.kind === 'addition') return batch.id;
  }
  throw new Error('no mixture of the example could be started');
}
