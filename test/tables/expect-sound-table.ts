import { expect } from 'vitest';
import type { ReferenceSource, SourcedRow } from '../../src/reference/index.ts';

const CONFIDENCES = ['read', 'read-secondary', 'computed', 'derived', 'memory'];

const repeated = (values: readonly string[]): string[] =>
  values.filter((value, index) => values.indexOf(value) !== index);

/** What every published table must keep: ids that are unique, sources that exist, a confidence for each row. */
export function expectSoundTable(rows: readonly SourcedRow[], sources: readonly ReferenceSource[]): void {
  const known = new Set([...sources.map(({ id }) => id), 'several']);
  const evidences = rows.flatMap((row) => [row, ...Object.values(row.evidence ?? {})]);
  expect(repeated(rows.map(({ id }) => id))).toEqual([]);
  expect(rows.map(({ id }) => id).filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/i.test(id))).toEqual([]);
  expect(evidences.map(({ source }) => source).filter((source) => !known.has(source))).toEqual([]);
  expect(rows.flatMap((row) => row.alsoSources ?? []).filter((source) => !known.has(source))).toEqual([]);
  expect(evidences.filter(({ confidence }) => !CONFIDENCES.includes(confidence))).toEqual([]);
  // A row known only from memory may not claim to have been read.
  const unread = new Set(sources.filter((source) => source.id === 'memory').map(({ id }) => id));
  expect(evidences.filter(({ source, confidence }) => unread.has(source) && confidence === 'read')).toEqual(
    [],
  );
}

/** Check digit of a CAS registry number: the sum of digit x position from the right, modulo 10. */
export function isCasNumber(cas: string): boolean {
  if (!/^\d{2,7}-\d{2}-\d$/.test(cas)) return false;
  const digits = [...cas.replaceAll('-', '')].map(Number).reverse();
  const sum = digits.slice(1).reduce((total, digit, index) => total + digit * (index + 1), 0);
  return sum % 10 === digits[0];
}

/** Half-open bands that leave no gap and do not overlap, in the order of the table. */
export function expectBandsToMeet(bands: readonly { over: number; upTo: number | null }[]): void {
  for (const [index, band] of bands.entries()) {
    const next = bands[index + 1];
    if (next !== undefined) expect(next.over).toBe(band.upTo);
    expect(band.upTo === null || band.upTo > band.over).toBe(true);
  }
}
