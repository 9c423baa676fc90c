import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { canonicalJson, digestOf } from './index.ts';

describe('the digest of data', () => {
  // FIPS 180-4 sample, "abc"; its JSON text has quotes, so the platform's own hash is the reference for everything else.
  it.each([[{ b: 1, a: [2, { d: null, c: 'ö €' }] }], ['abc'], [[]], [{ long: 'x'.repeat(1000) }]])(
    "agrees with the platform's SHA-256 on %j",
    (value) => {
      expect(digestOf(value)).toBe(createHash('sha256').update(canonicalJson(value)).digest('hex'));
    },
  );

  it('does not depend on the order of the keys', () => {
    expect(digestOf({ a: 1, b: 2 })).toBe(digestOf({ b: 2, a: 1 }));
    expect(digestOf({ a: 1, b: undefined })).toBe(digestOf({ a: 1 }));
    expect(digestOf({ a: 1 })).not.toBe(digestOf({ a: 2 }));
  });
});
