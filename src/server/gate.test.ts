import { createHash } from 'node:crypto';
import { Agent } from 'node:https';
import type { TLSSocket } from 'node:tls';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Answered, codesIn, openNetwork, type TestNetwork } from '../../test/workshop/open-network.ts';
import { type Route, routes } from '../contract/index.ts';

let shop: TestNetwork;
beforeEach(async () => {
  shop = await openNetwork();
});
afterEach(() => shop.close());

const PIN = '4821';
const people = () => shop.bench.people;
const post = (path: string, body: unknown, cookie?: string, headers: Record<string, string> = {}) =>
  shop.ask(path, { method: 'POST', body, ...(cookie === undefined ? {} : { cookie }), headers });
const setPin = (person: string, pin: string | null = PIN) => shop.write(`/api/people/${person}/pin`, { pin });
const unlock = (cookie: string, person = people().first, pin = PIN) =>
  post('/api/reach/unlock', { stamp: shop.bench.stamp({ by: person }), pin }, cookie);
const addPlace = (cookie: string, name: string, more: object = {}) =>
  post('/api/places', { stamp: shop.bench.stamp(), name, kind: 'shelf', ...more }, cookie);
const isRefused = ({ status }: Answered, ...expected: number[]) => expect(expected).toContain(status);

/** Every route of the table with something for its parameters. */
const every = Object.entries(routes as Record<string, Route>).map(([name, { method, path, openTo }]) => ({
  name,
  method,
  path: path.replace(/:\w+/g, 'x'),
  openTo,
}));

describe('a device that is not paired', () => {
  it('is answered by no route but the three that pair it', async () => {
    const answered: string[] = [];
    const agent = new Agent({ keepAlive: true });
    for (const { name, method, path } of every) {
      const answer = await shop.ask(path, { method, agent, ...(method === 'GET' ? {} : { body: {} }) });
      if (answer.status !== 401) answered.push(name);
      else expect(codesIn(answer)).toEqual(['device-not-paired']);
    }
    agent.destroy();
    expect(answered).toEqual(['getDoor', 'getAuthority', 'pairDevice']);
    for (const path of ['/api', '/api/', '/api/openapi.json', '/api/nothing', '/api/live'])
      isRefused(await shop.ask(path), 401, 404);
  });

  it('is not let in by a made-up cookie, nor by an empty one', async () => {
    for (const cookie of [
      '__Host-gramwright-device=',
      '__Host-gramwright-device=abc',
      'gramwright-device=x',
      '',
    ])
      isRefused(await shop.ask('/api/workshop', { cookie }), 401);
  });

  it('is told nobody’s name', async () => {
    expect((await shop.ask('/api/reach/door')).json).toMatchObject({ device: null, people: [] });
  });
});

describe('pairing', () => {
  it('gives a cookie that no script reads, no other site sends and no other host gets; the file has only its hash', async () => {
    const answer = await post('/api/reach/pair', { code: await shop.code(), name: 'Bench tablet' });
    expect(answer.status).toBe(201);
    const [cookie = '', ...more] = answer.headers['set-cookie'] ?? [];
    expect(more).toEqual([]);
    const [pair = '', ...flags] = cookie.split('; ');
    expect(flags.sort()).toEqual(['HttpOnly', 'Max-Age=34560000', 'Path=/', 'SameSite=Strict', 'Secure']);
    const [name, token = ''] = pair.split('=');
    expect(name).toBe('__Host-gramwright-device');
    expect(Buffer.from(token, 'base64url')).toHaveLength(32);
    expect(answer.text).not.toContain(token);
    const row = shop.bench.context.storage.handle.prepare('select token_hash from device').get();
    expect(row).toEqual({ token_hash: createHash('sha256').update(token).digest('hex') });
    const everything = JSON.stringify((await shop.atHome('/api/export.json')).json);
    expect(everything).toContain('Bench tablet');
    expect(everything).not.toContain((row as { token_hash: string }).token_hash);
    expect(everything).not.toContain(token);
  });

  it('takes the code with a gap, once', async () => {
    const code = await shop.code();
    expect(code).toMatch(/^\d{8}$/);
    const spaced = `${code.slice(0, 4)} ${code.slice(4)}`;
    expect((await post('/api/reach/pair', { code: spaced, name: 'One' })).status).toBe(201);
    const again = await post('/api/reach/pair', { code, name: 'Two' });
    expect(codesIn(again)).toEqual(['pairing-closed']);
    expect(again.headers['set-cookie']).toBeUndefined();
  });

  const wrong = (code: string) => String((Number(code) + 1) % 100_000_000).padStart(8, '0');

  it('takes the right code after four wrong ones', async () => {
    const code = await shop.code();
    for (let tries = 0; tries < 4; tries += 1)
      expect(codesIn(await post('/api/reach/pair', { code: wrong(code), name: 'X' }))).toEqual([
        'pairing-wrong',
      ]);
    expect((await post('/api/reach/pair', { code, name: 'X' })).status).toBe(201);
  });

  it('is over after five wrong ones, also for the right one', async () => {
    const code = await shop.code();
    for (let tries = 0; tries < 4; tries += 1)
      await post('/api/reach/pair', { code: wrong(code), name: 'X' });
    const fifth = await post('/api/reach/pair', { code: wrong(code), name: 'X' });
    expect([fifth.status, codesIn(fifth)]).toEqual([429, ['pairing-locked']]);
    expect(codesIn(await post('/api/reach/pair', { code, name: 'X' }))).toEqual(['pairing-locked']);
    expect((await post('/api/reach/pair', { code: await shop.code(), name: 'X' })).status).toBe(201);
  });

  it('counts wrong codes that are sent at once one by one', async () => {
    const code = await shop.code();
    const all = await Promise.all(
      Array.from({ length: 8 }, () => post('/api/reach/pair', { code: wrong(code), name: 'X' })),
    );
    expect(all.filter((answer) => codesIn(answer)[0] === 'pairing-wrong')).toHaveLength(4);
  });

  it.each([
    ['2026-11-26T08:14:59Z', 201],
    ['2026-11-26T08:15:00Z', 422],
  ])('asked for at 08:05:00 is answered at %s with %i', async (instant, status) => {
    const code = await shop.code();
    shop.bench.setClock(instant);
    expect((await post('/api/reach/pair', { code, name: 'X' })).status).toBe(status);
  });

  it('needs a name that no other device has, and keeps the code for the next try', async () => {
    await shop.pair('Tablet');
    const code = await shop.code();
    expect(codesIn(await post('/api/reach/pair', { code: '00000000', name: 'TABLET' }))).toEqual([
      'pairing-wrong',
    ]);
    expect(codesIn(await post('/api/reach/pair', { code, name: 'TABLET' }))).toEqual(['device-name-taken']);
    expect((await post('/api/reach/pair', { code, name: 'Phone' })).status).toBe(201);
  });

  it.each([
    [{ code: '1234567', name: 'X' }, 'format-regex'],
    [{ code: '12345678', name: ' ' }, 'value-too-small'],
    [{ code: '12345678', name: 'x'.repeat(61) }, 'value-too-large'],
    [{ name: 'X' }, 'field-missing'],
  ])('refuses %j', async (body, code) => {
    await shop.code();
    expect(codesIn(await post('/api/reach/pair', body))).toEqual([code]);
  });

  it('is for devices: at the workshop’s own computer nobody is paired', async () => {
    const code = await shop.code();
    const answer = await shop.atHome('/api/reach/pair', { method: 'POST', body: { code, name: 'X' } });
    expect([answer.status, codesIn(answer)]).toEqual([403, ['only-on-a-device']]);
  });

  it('is signed by whoever asked for the code', async () => {
    await shop.pair('Tablet');
    const entry = shop.bench.context.storage.handle
      .prepare("select person_id, payload from entry where kind = 'device-paired'")
      .get();
    expect(entry).toEqual({ person_id: people().first, payload: '{"name":"Tablet"}' });
  });
});

describe('a paired device', () => {
  let cookie = '';
  let id = '';
  beforeEach(async () => {
    ({ cookie, id } = await shop.pair('Bench tablet'));
  });

  it('reads, and is known by its name; its cookie is given again', async () => {
    expect((await shop.ask('/api/workshop', { cookie })).status).toBe(200);
    const door = await shop.ask('/api/reach/door', { cookie });
    expect(door.json).toMatchObject({ door: 'network', device: { id, name: 'Bench tablet' } });
    expect(door.headers['set-cookie']?.[0]).toContain(`${cookie}; Max-Age=34560000`);
    expect((await shop.ask('/api/workshop', { cookie: `a=b; ${cookie}; c=d` })).status).toBe(200);
  });

  it('writes nothing for somebody who has not entered their PIN there', async () => {
    await setPin(people().first);
    const refusal = await addPlace(cookie, 'Loft');
    expect([refusal.status, codesIn(refusal)]).toEqual([401, ['person-locked']]);
    await unlock(cookie);
    expect((await addPlace(cookie, 'Loft')).status).toBe(201);
    const other = await addPlace(cookie, 'Cellar', { stamp: shop.bench.stamp({ by: people().second }) });
    expect(codesIn(other)).toEqual(['person-locked']);
  });

  it('goes by the name that the owner gave it, whatever it calls itself', async () => {
    await setPin(people().first);
    await unlock(cookie);
    await addPlace(cookie, 'Loft', { stamp: shop.bench.stamp({ device: 'the till' }) });
    await shop.write(`/api/reach/devices/${id}`, { version: 1, name: 'Old tablet' }, 'PUT');
    await addPlace(cookie, 'Cellar');
    const entries = shop.bench.context.storage.handle
      .prepare("select device from entry where kind = 'place-added' order by seq")
      .all();
    expect(entries).toEqual([{ device: 'Bench tablet' }, { device: 'Old tablet' }]);
  });

  it('sends an entry again after it was renamed, and it counts once', async () => {
    await setPin(people().first);
    await unlock(cookie);
    const body = { stamp: shop.bench.stamp(), name: 'Loft', kind: 'shelf' };
    const first = await post('/api/places', body, cookie);
    await shop.write(`/api/reach/devices/${id}`, { version: 1, name: 'Old tablet' }, 'PUT');
    const again = await post('/api/places', body, cookie);
    expect(again.json).toEqual(first.json);
    const other = await post('/api/places', { ...body, name: 'Cellar' }, cookie);
    expect([other.status, codesIn(other)]).toEqual([409, ['stamp-used-otherwise']]);
  });

  it('does nothing that belongs to the workshop’s own computer', async () => {
    const own = every.filter(({ openTo }) => openTo === 'own-computer');
    expect(own.map(({ name }) => name)).toEqual(
      expect.arrayContaining([
        'getReach',
        'switchReach',
        'openPairing',
        'dropDevice',
        'setPin',
        'exportJson',
        'backUp',
      ]),
    );
    for (const { method, path, name } of own) {
      const answer = await shop.ask(path, { method, cookie, ...(method === 'GET' ? {} : { body: {} }) });
      expect([name, answer.status]).toEqual([name, 403]);
    }
  });

  it('that is dropped is refused from its next request on, and what it had open is ended', async () => {
    const agent = new Agent({ keepAlive: true, maxSockets: 1 });
    await shop.ask('/api/workshop', { cookie, agent });
    const [socket] = Object.values(agent.freeSockets).flat() as TLSSocket[];
    const ended = new Promise((closed) => socket?.once('close', closed));
    await shop.write(`/api/reach/devices/${id}/drop`, { version: 1 });
    await ended;
    const refusal = await shop.ask('/api/workshop', { cookie });
    expect([refusal.status, codesIn(refusal)]).toEqual([401, ['device-not-paired']]);
    agent.destroy();
    const entry = shop.bench.context.storage.handle
      .prepare("select person_id, subject_id from entry where kind = 'device-dropped'")
      .get();
    expect(entry).toEqual({ person_id: people().first, subject_id: id });
    expect((await shop.atHome('/api/reach')).json).toMatchObject({ devices: [] });
  });

  it('that was dropped stays out where an older file is put back', async () => {
    const { handle } = shop.bench.context.storage;
    await shop.write(`/api/reach/devices/${id}/drop`, { version: 1 });
    handle.exec('update device set is_dropped = 0, version = 1');
    expect((await shop.ask('/api/workshop', { cookie })).status).toBe(401);
  });

  it('is dropped and renamed by the version that was seen, and a dropped one no more', async () => {
    const change = (version: number, name: string) =>
      shop.atHome(`/api/reach/devices/${id}`, {
        method: 'PUT',
        body: { stamp: shop.bench.stamp(), version, name },
      });
    expect((await change(1, 'Phone')).status).toBe(200);
    expect((await change(1, 'Laptop')).status).toBe(409);
    await shop.write(`/api/reach/devices/${id}/drop`, { version: 2 });
    expect((await change(3, 'Laptop')).status).toBe(404);
  });

  it('is seen, to the minute', async () => {
    const lastSeen = async () =>
      ((await shop.atHome('/api/reach')).json as { devices: { lastSeen: string | null }[] }).devices[0]
        ?.lastSeen;
    await shop.ask('/api/workshop', { cookie });
    expect(await lastSeen()).toBe('2026-11-26T08:05:00Z');
    shop.bench.setClock('2026-11-26T08:05:59Z');
    await shop.ask('/api/workshop', { cookie });
    expect(await lastSeen()).toBe('2026-11-26T08:05:00Z');
    shop.bench.setClock('2026-11-26T08:06:00Z');
    await shop.ask('/api/workshop', { cookie });
    expect(await lastSeen()).toBe('2026-11-26T08:06:00Z');
  });

  it('keeps its pairing and who is unlocked through a restart', async () => {
    await setPin(people().first);
    await unlock(cookie);
    await shop.network.door.close();
    await shop.network.door.start({ isWanted: false });
    expect((await addPlace(cookie, 'Loft')).status).toBe(201);
  });
});

describe('another site', () => {
  let cookie = '';
  beforeEach(async () => {
    ({ cookie } = await shop.pair('Bench tablet'));
    await setPin(people().first);
    await unlock(cookie);
  });
  const places = () =>
    shop.bench.context.storage.handle.prepare('select count(*) as n from place').get() as { n: number };

  it.each([
    ['another host', { host: 'evil.example' }, 403],
    ['the plain door’s name', { host: '127.0.0.1:4716' }, 403],
    ['no port', { host: 'bench.local' }, 403],
    ['another origin', { origin: 'https://evil.example' }, 403],
    ['the own origin over http', { origin: 'http://bench.local:4443' }, 403],
    ['no origin at all, said as such', { origin: 'null' }, 403],
    ['a page of another site', { 'sec-fetch-site': 'cross-site' }, 403],
    ['another port of this computer', { 'sec-fetch-site': 'same-site' }, 403],
    ['an address that was typed', { 'sec-fetch-site': 'none' }, 403],
    ['a form', { 'content-type': 'application/x-www-form-urlencoded' }, 415],
    ['a form that says it is text', { 'content-type': 'text/plain' }, 415],
    ['nothing said of what it is', { 'content-type': '' }, 415],
  ])('does nothing by way of %s', async (_what, headers, status) => {
    const before = places();
    const body = { stamp: shop.bench.stamp(), name: 'Loft', kind: 'shelf' };
    const answer = await post('/api/places', body, cookie, headers as Record<string, string>);
    expect(answer.status).toBe(status);
    expect(places()).toEqual(before);
  });

  it('that is our own page does what it says', async () => {
    const origin = `https://bench.local:${shop.port()}`;
    const body = { stamp: shop.bench.stamp(), name: 'Loft', kind: 'shelf' };
    const headers = { origin, 'sec-fetch-site': 'same-origin' };
    expect((await post('/api/places', body, cookie, headers)).status).toBe(201);
  });

  it('reads nothing either, and may lead here by a link', async () => {
    const from = (site: string) => ({ cookie, headers: { 'sec-fetch-site': site } });
    expect((await shop.ask('/api/workshop', from('cross-site'))).status).toBe(403);
    expect((await shop.ask('/api/workshop', from('none'))).status).toBe(200);
    // The pages themselves hold nothing of the workshop; they are not built in this test.
    expect(codesIn(await shop.ask('/', from('cross-site')))).toEqual(['pages-not-built']);
  });
});

describe('what every answer carries over the network', () => {
  it('is the same as at the workshop’s own computer, without a rule that would outlive the certificate', async () => {
    for (const path of ['/api/reach/door', '/api/workshop', '/']) {
      const { headers } = await shop.ask(path);
      expect(headers['content-security-policy']).toContain("default-src 'self'");
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['x-frame-options']).toBe('DENY');
      expect(headers['referrer-policy']).toBe('no-referrer');
      expect(headers['cross-origin-opener-policy']).toBe('same-origin');
      expect(headers['strict-transport-security']).toBeUndefined();
      expect(headers['access-control-allow-origin']).toBeUndefined();
    }
  });
});

describe('a PIN', () => {
  let cookie = '';
  let deviceId = '';
  beforeEach(async () => {
    const paired = await shop.pair('Bench tablet');
    cookie = paired.cookie;
    deviceId = paired.id;
    await setPin(people().first);
  });

  it('unlocks its person, on that device alone', async () => {
    const other = await shop.pair('Phone');
    expect((await unlock(cookie)).status).toBe(201);
    const whoOn = async (device: string) =>
      ((await shop.ask('/api/reach/door', { cookie: device })).json as { people: object[] }).people;
    expect(await whoOn(cookie)).toEqual([
      { id: people().first, name: 'Ada Quill', hasPin: true, isUnlocked: true },
      { id: people().second, name: 'Bo Marsh', hasPin: false, isUnlocked: false },
    ]);
    expect(await whoOn(other.cookie)).toMatchObject([{ isUnlocked: false }, { isUnlocked: false }]);
    expect((await addPlace(other.cookie, 'Loft')).status).toBe(401);
  });

  it('that nobody set unlocks nobody', async () => {
    expect(codesIn(await unlock(cookie, people().second))).toEqual(['pin-not-set']);
    await setPin(people().first, null);
    expect(codesIn(await unlock(cookie))).toEqual(['pin-not-set']);
  });

  it('locks everywhere once it changes', async () => {
    await unlock(cookie);
    await setPin(people().first, '9057');
    expect(codesIn(await addPlace(cookie, 'Loft'))).toEqual(['person-locked']);
    expect(codesIn(await unlock(cookie))).toEqual(['pin-wrong']);
    expect((await unlock(cookie, people().first, '9057')).status).toBe(201);
  });

  it('is locked again by its person, or by whoever finds the tablet', async () => {
    await unlock(cookie);
    expect((await post('/api/reach/lock', { stamp: shop.bench.stamp() }, cookie)).status).toBe(201);
    expect(codesIn(await addPlace(cookie, 'Loft'))).toEqual(['person-locked']);
  });

  it('is changed on a device by the old one, and stays unlocked there and nowhere else', async () => {
    const other = await shop.pair('Phone');
    await unlock(cookie);
    await unlock(other.cookie);
    const change = (oldPin: string, pin: string) =>
      post('/api/reach/pin', { stamp: shop.bench.stamp(), oldPin, pin }, cookie);
    expect(codesIn(await change('0000', '9057'))).toEqual(['pin-wrong']);
    expect(codesIn(await change(PIN, '1234'))).toEqual(['pin-too-plain']);
    expect((await change(PIN, '9057')).status).toBe(201);
    expect((await addPlace(cookie, 'Loft')).status).toBe(201);
    expect(codesIn(await addPlace(other.cookie, 'Cellar'))).toEqual(['person-locked']);
  });

  it('of a person who left signs nothing any more', async () => {
    await unlock(cookie);
    await shop.write('/api/people', {
      stamp: shop.bench.stamp({ by: people().second }),
      id: people().first,
      version: 1,
      name: 'Ada Quill',
      isActive: false,
    });
    expect(codesIn(await addPlace(cookie, 'Loft'))).toEqual(['person-unknown']);
  });

  it('is asked for by no page of the workshop’s own computer', async () => {
    const body = { stamp: shop.bench.stamp(), name: 'Loft', kind: 'shelf' };
    expect((await shop.atHome('/api/places', { method: 'POST', body })).status).toBe(201);
    const door = await shop.atHome('/api/reach/door');
    expect(door.json).toMatchObject({
      door: 'own-computer',
      people: [
        { hasPin: true, isUnlocked: true },
        { hasPin: false, isUnlocked: true },
      ],
    });
    const answer = await shop.atHome('/api/reach/unlock', {
      method: 'POST',
      body: { stamp: shop.bench.stamp(), pin: PIN },
    });
    expect(codesIn(answer)).toEqual(['only-on-a-device']);
  });

  it('is looked at again only after a wait that grows, and not at all after ten wrong ones', async () => {
    const wrong = async () => codesIn(await unlock(cookie, people().first, '0912'))[0];
    const at = (seconds: number) =>
      shop.bench.setClock(new Date(Date.parse('2026-11-26T09:00:00Z') + seconds * 1000).toISOString());
    at(0);
    expect([await wrong(), await wrong(), await wrong()]).toEqual([
      'pin-wrong',
      'pin-wrong',
      'pin-wrong-wait',
    ]);
    // Three wrong ones: thirty seconds, for the right one too.
    at(29);
    const early = await unlock(cookie);
    expect([early.status, codesIn(early)]).toEqual([429, ['pin-wait']]);
    let now = 30;
    // Minutes after the fourth to the ninth.
    for (const minutes of [1, 5, 15, 60, 60, 60]) {
      at(now);
      expect(await wrong()).toBe('pin-wrong-wait');
      at(now + minutes * 60 - 1);
      expect(await wrong()).toBe('pin-wait');
      now += minutes * 60;
    }
    at(now);
    expect(await wrong()).toBe('pin-locked');
    at(now + 1_000_000);
    expect(codesIn(await unlock(cookie))).toEqual(['pin-locked']);
    // Only this device and this person; a new PIN begins anew.
    const phone = await shop.pair('Phone');
    expect((await unlock(phone.cookie)).status).toBe(201);
    await setPin(people().first, '9057');
    expect((await unlock(cookie, people().first, '9057')).status).toBe(201);
  });

  it('that is right begins the count anew', async () => {
    for (let times = 0; times < 3; times += 1) {
      await unlock(cookie, people().first, '0912');
      await unlock(cookie, people().first, '0912');
      expect((await unlock(cookie)).status).toBe(201);
    }
  });

  it('is guessed no faster by many at once', async () => {
    const all = await Promise.all(Array.from({ length: 12 }, () => unlock(cookie, people().first, '0912')));
    const codes = all.map((answer) => codesIn(answer)[0]);
    expect(codes.filter((code) => code === 'pin-wrong' || code === 'pin-wrong-wait')).toHaveLength(3);
    expect(codes.filter((code) => code === 'pin-wait')).toHaveLength(9);
  });

  it('stands nowhere in chain, exports or answers, and its hash only in the file', async () => {
    await unlock(cookie);
    const { handle } = shop.bench.context.storage;
    const entries = handle.prepare('select payload, request_hash, rows from entry').all() as {
      payload: string;
      request_hash: string;
    }[];
    expect(JSON.stringify(entries.map(({ payload }) => payload))).not.toContain(PIN);
    const { salt, hash } = handle.prepare('select salt, hash from person_pin').get() as Record<
      string,
      string
    >;
    const everything = (await shop.atHome('/api/export.json')).text;
    for (const secret of [salt, hash]) expect(everything).not.toContain(secret);
    expect(everything).toContain('"person_pin"');
    const found = (await shop.atHome('/api/check-up')).json as { isSound: boolean };
    expect(found.isSound).toBe(true);
    expect(deviceId).not.toBe('');
  });

  it('that was slipped into the file past the program is found by the check-up', async () => {
    const { handle } = shop.bench.context.storage;
    handle.prepare('update person_pin set hash = ?').run('00');
    expect((await shop.atHome('/api/check-up')).json).toMatchObject({ isSound: false });
  });
});
