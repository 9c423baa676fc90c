import { createHmac, randomBytes, scryptSync } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import {
  hashDeviceToken,
  hashPin,
  isPin,
  isSameSecret,
  keyedHash,
  nameOfKey,
  newDeviceToken,
  randomDigits,
} from './secrets.ts';

const key = randomBytes(32);

describe('a device’s secret', () => {
  it('has 256 bits, is another each time, and is kept as its SHA-256 only', () => {
    const [one, other] = [newDeviceToken(), newDeviceToken()];
    expect(Buffer.from(one, 'base64url')).toHaveLength(32);
    expect(one).not.toBe(other);
    // FIPS 180-4, the published digest of "abc".
    expect(hashDeviceToken('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
});

describe('a PIN', () => {
  it('is known again, and no other is', async () => {
    const kept = await hashPin('4821', key);
    expect(await isPin('4821', key, kept)).toBe(true);
    for (const wrong of ['4822', '482', '48210', '', '4821 '])
      expect(await isPin(wrong, key, kept), wrong).toBe(false);
  });

  it('is stretched by scrypt with a salt of its own', async () => {
    const [one, other] = [await hashPin('4821', key), await hashPin('4821', key)];
    expect(one.salt).not.toBe(other.salt);
    expect(Buffer.from(one.salt, 'hex')).toHaveLength(16);
    const expected = scryptSync(
      createHmac('sha256', key).update('4821').digest(),
      Buffer.from(one.salt, 'hex'),
      32,
      { N: 16_384, r: 8, p: 1 },
    );
    expect(one.hash).toBe(expected.toString('hex'));
  });

  it('cannot be tried through without the key', async () => {
    const kept = await hashPin('4821', key);
    expect(await isPin('4821', randomBytes(32), kept)).toBe(false);
  });

  it('whose hash was cut short is nobody’s', async () => {
    const { salt } = await hashPin('4821', key);
    expect(await isPin('4821', key, { salt, hash: '' })).toBe(false);
  });
});

describe('digits', () => {
  it('are as many as asked for', () => {
    expect(randomDigits(8)).toMatch(/^\d{8}$/);
    expect(randomDigits(0)).toBe('');
  });
});

describe('comparing', () => {
  it('says whether two are the same, of whatever length', () => {
    expect(isSameSecret('12345678', '12345678')).toBe(true);
    expect(isSameSecret('12345678', '12345679')).toBe(false);
    expect(isSameSecret('1', '12345678')).toBe(false);
    expect(isSameSecret('', '')).toBe(true);
  });
});

describe('what hangs on a key', () => {
  it('is the same with the same key only', () => {
    expect(keyedHash('x', key)).toBe(keyedHash('x', key));
    expect(keyedHash('x', key)).not.toBe(keyedHash('x', randomBytes(32)));
    expect(nameOfKey(key)).toMatch(/^[0-9a-f]{16}$/);
    expect(nameOfKey(key)).not.toBe(nameOfKey(randomBytes(32)));
  });
});
