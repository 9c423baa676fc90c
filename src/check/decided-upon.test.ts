import { describe, expect, it } from 'vitest';
import { canonicalJson, digestOf } from '../core/digest/index.ts';
import { exact } from '../core/quantity/index.ts';
import type { MaterialDetails, OpenedRevision } from './checked.ts';
import { groundsOf } from './decided-upon.ts';

const material = (name: string, constituents: string[]) =>
  ({
    name,
    supplier: 'Invented & Sons "oils"',
    inciEu: `${name} Oil`,
    botanical: '',
    cas: ['8008-57-9'],
    plantPart: 'peel',
    process: 'expressed',
    role: 'fragrance',
    constituentsAre: 'partial',
    constituents: constituents.map((each) => ({
      name: each,
      cas: null,
      leastPercent: '0',
      typicalPercent: '1',
      mostPercent: '2',
      source: 'a paper',
      confidence: 'supplier',
    })),
  }) as unknown as MaterialDetails;

const opened = (shares: Record<string, string>, materials: Record<string, MaterialDetails>) =>
  ({
    expanded: {
      whole: 1n,
      materials: Object.entries(shares).map(([materialId, percent]) => ({
        materialId,
        parts: 1n,
        percent: exact(percent),
      })),
    },
    materials: new Map(Object.entries(materials)),
  }) as unknown as OpenedRevision;

const orange = material('Orange', ['limonene', 'citral']);
const cedar = material('Cedar', ['cedrol']);

describe('what a decision is taken upon', () => {
  it('has the digest of its canonical text, as it was worked out of the data themselves', () => {
    const both = opened({ a: '0.9', b: '0.6' }, { a: orange, b: cedar });
    for (const names of [['Orange'], ['Cedar'], ['Cedar', 'Orange'], []]) {
      const { upon, digest } = groundsOf(both).of(names);
      expect(upon).toHaveLength(names.length);
      expect(digest).toBe(digestOf(upon));
    }
    expect(canonicalJson(groundsOf(both).of(['Cedar']).upon)).toContain('"percent":"0.6"');
  });

  it('is the same whatever the order of the lines and of the constituents', () => {
    const one = groundsOf(opened({ a: '0.9', b: '0.6' }, { a: orange, b: cedar })).of(['Orange', 'Cedar']);
    const turned = material('Orange', ['citral', 'limonene']);
    const other = groundsOf(opened({ b: '0.6', a: '0.9' }, { a: turned, b: cedar })).of(['Orange', 'Cedar']);
    expect(other.digest).toBe(one.digest);
  });

  it('is another with another share, or another paper', () => {
    const digest = groundsOf(opened({ a: '0.9' }, { a: orange })).of(['Orange']).digest;
    expect(groundsOf(opened({ a: '0.91' }, { a: orange })).of(['Orange']).digest).not.toBe(digest);
    const less = material('Orange', ['limonene']);
    expect(groundsOf(opened({ a: '0.9' }, { a: less })).of(['Orange']).digest).not.toBe(digest);
  });
});
