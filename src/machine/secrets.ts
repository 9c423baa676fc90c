import {
  createHash,
  createHmac,
  randomBytes,
  randomInt,
  type ScryptOptions,
  scrypt,
  timingSafeEqual,
} from 'node:crypto';

/** What a paired device shows at each request: 256 random bits. Only its hash is kept. */
export const newDeviceToken = (): string => randomBytes(32).toString('base64url');

/** Random bits need no salt: nobody can try them through. */
export const hashDeviceToken = (token: string): string => createHash('sha256').update(token).digest('hex');

/** So many digits, each equally likely. */
export const randomDigits = (count: number): string =>
  Array.from({ length: count }, () => randomInt(10)).join('');

/** Compares without telling by the time taken how much of it fits. */
export function isSameSecret(one: string, other: string): boolean {
  const [first, second] = [one, other].map((text) => createHash('sha256').update(text).digest());
  return first !== undefined && second !== undefined && timingSafeEqual(first, second);
}

/** What is kept of a PIN. */
export interface PinHash {
  readonly salt: string;
  readonly hash: string;
}

/** RFC 7914, section 2, with the memory of common practice (16 MiB): a fraction of a second here, once for each try. */
const COST: ScryptOptions = { N: 16_384, r: 8, p: 1 };
const BYTES = 32;

const stretch = (pin: Buffer, salt: Buffer): Promise<Buffer> =>
  new Promise((done, failed) => {
    scrypt(pin, salt, BYTES, COST, (error, key) => (error ? failed(error) : done(key)));
  });

/**
 * A PIN has so few digits that its hash alone could be tried through in minutes, however slow each try is. So the hash
 * also needs a key that never goes into the workshop's file: whoever has a backup or an export learns no PIN from it.
 */
const hashWith = (pin: string, key: Buffer, salt: Buffer): Promise<Buffer> =>
  stretch(createHmac('sha256', key).update(pin).digest(), salt);

export async function hashPin(pin: string, key: Buffer): Promise<PinHash> {
  const salt = randomBytes(16);
  return { salt: salt.toString('hex'), hash: (await hashWith(pin, key, salt)).toString('hex') };
}

export async function isPin(pin: string, key: Buffer, { salt, hash }: PinHash): Promise<boolean> {
  const tried = await hashWith(pin, key, Buffer.from(salt, 'hex'));
  const kept = Buffer.from(hash, 'hex');
  return kept.length === tried.length && timingSafeEqual(kept, tried);
}

/** Stands for a secret where one has to tell whether it is the same, without being of use to anybody without the key. */
export const keyedHash = (text: string, key: Buffer): string =>
  createHmac('sha256', key).update(text).digest('hex');

/** Tells keys apart without saying anything of them. */
export const nameOfKey = (key: Buffer): string =>
  createHash('sha256').update('gramwright pin key\n').update(key).digest('hex').slice(0, 16);
