import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { canonicalJson, insertDevice } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { useCases } from '../index.ts';

let folder = '';
let bench: TestWorkshop;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'gramwright-pin-'));
});
afterEach(async () => {
  await bench.close();
  rmSync(folder, { recursive: true });
});

const DEVICE = { id: 'device-1', name: 'Tablet' };
const onDevice = (): Context => ({ ...bench.context, asker: { device: DEVICE } });
const unlock = (pin: string) =>
  useCases.unlockPerson(onDevice(), {
    params: {},
    query: undefined,
    body: { stamp: bench.stamp(), pin },
  });
const open = async (file?: string) => {
  bench = await openTestWorkshop(file === undefined ? {} : { file });
  await insertDevice(bench.context.storage.db, {
    id: DEVICE.id,
    name: DEVICE.name,
    token_hash: 'x',
    paired_at: bench.now(),
    is_dropped: 0,
    version: 1,
  });
};

describe('what is kept of a PIN', () => {
  it('cannot be found by trying every PIN, neither from the request’s hash nor from the file alone', async () => {
    await open();
    const stamp = bench.stamp();
    const params = { id: bench.people.first };
    await bench.get('setPin', { params, body: { stamp, pin: '4821' } });
    const hashOf = (kind: string) =>
      bench.context.storage.handle.prepare('select request_hash as hash from entry where kind = ?').get(kind);
    // As requests without a secret are hashed: whoever knows the chain knows everything of it but the PIN.
    const hashed = (route: string, request: object) =>
      createHash('sha256')
        .update(`\n${canonicalJson([route, request])}`)
        .digest('hex');
    const place = { stamp: bench.stamp(), name: 'Loft', kind: 'shelf' as const };
    await bench.get('savePlace', { body: place });
    expect(hashOf('place-added')).toEqual({
      hash: hashed('savePlace', { params: {}, query: undefined, body: place }),
    });
    const tried = Array.from({ length: 10_000 }, (_, pin) => String(pin).padStart(4, '0')).map((pin) => ({
      hash: hashed('setPin', { params, query: undefined, body: { stamp, pin } }),
    }));
    expect(tried).not.toContainEqual(hashOf('pin-set'));
  });

  it('is the same request with the same PIN, and another with another', async () => {
    await open();
    const stamp = bench.stamp();
    const set = (pin: string) =>
      bench.ask('setPin', { params: { id: bench.people.first }, body: { stamp, pin } });
    expect((await set('4821')).ok).toBe(true);
    expect((await set('4821')).ok).toBe(true);
    expect(codesOf(await set('4822'))).toEqual(['stamp-used-otherwise']);
  });

  it('hangs on a key beside the file, for its owner alone; on another computer the PIN is set anew', async () => {
    const file = join(folder, 'workshop.gramwright');
    await open(file);
    await bench.get('setPin', { params: { id: bench.people.first }, body: { pin: '4821' } });
    const key = join(folder, 'network', 'pin.key');
    expect(statSync(key).mode & 0o777).toBe(0o600);
    expect(readFileSync(key, 'utf8')).toMatch(/^[0-9a-f]{64}\n$/);
    expect((await unlock('4821')).ok).toBe(true);
    rmSync(key);
    expect(codesOf(await unlock('4821'))).toEqual(['pin-not-set']);
    const door = await useCases.getDoor(onDevice(), { params: {}, query: undefined, body: undefined });
    expect(door).toMatchObject({ value: { people: [{ hasPin: false }, { hasPin: false }] } });
    await bench.get('setPin', { params: { id: bench.people.first }, body: { pin: '4821' } });
    expect((await unlock('4821')).ok).toBe(true);
  });

  it('is refused where it is no PIN, or everybody’s, or nobody’s', async () => {
    await open();
    const set = (pin: string | null, id = bench.people.first) =>
      bench.ask('setPin', { params: { id }, body: { pin } });
    for (const pin of ['482', '482109153', '48 21', 'abcd', ''])
      expect(codesOf(await set(pin)), pin).toEqual(['format-regex']);
    expect(codesOf(await set('1111'))).toEqual(['pin-too-plain']);
    expect(codesOf(await set('4821', 'nobody'))).toEqual(['thing-not-found']);
    expect((await set('48210915')).ok).toBe(true);
  });
});

describe('a PIN that its person changes', () => {
  const change = (body: object) =>
    useCases.changeOwnPin(onDevice(), { params: {}, query: undefined, body: body as never });

  it('is changed once, and the same request again is answered again and counts as no wrong try', async () => {
    await open();
    await bench.get('setPin', { params: { id: bench.people.first }, body: { pin: '4821' } });
    const body = { stamp: bench.stamp(), oldPin: '4821', pin: '9163' };
    for (let sent = 0; sent < 6; sent += 1) expect((await change(body)).ok).toBe(true);
    expect((await unlock('9163')).ok).toBe(true);
  });

  it('is not told by asking whether a request fits: each guess is a try', async () => {
    await open();
    await bench.get('setPin', { params: { id: bench.people.first }, body: { pin: '4821' } });
    const stamp = bench.stamp();
    await change({ stamp, oldPin: '4821', pin: '9163' });
    const guess = async (pin: string) => codesOf(await change({ stamp, oldPin: '4821', pin }));
    expect(await guess('9164')).toEqual(['pin-wrong']);
    await guess('9165');
    await guess('9166');
    expect(await guess('9163')).toEqual(['pin-wait']);
  });
});

describe('wrong PINs', () => {
  it('are counted on disk: opening the file again gains nobody another try', async () => {
    const file = join(folder, 'workshop.gramwright');
    await open(file);
    await bench.get('setPin', { params: { id: bench.people.first }, body: { pin: '4821' } });
    for (let tries = 0; tries < 3; tries += 1) await unlock('0912');
    const { first } = bench.people;
    await bench.close();
    bench = await openTestWorkshop({ file, isEmpty: true });
    Object.assign(bench.people, { first });
    expect(codesOf(await unlock('4821'))).toEqual(['pin-wait']);
  });
});

describe('a workshop that never let anybody in', () => {
  it('has no folder for its network, however often its pages are opened', async () => {
    await open(join(folder, 'workshop.gramwright'));
    await bench.get('getDoor');
    expect(() => statSync(join(folder, 'network'))).toThrow('ENOENT');
  });
});
