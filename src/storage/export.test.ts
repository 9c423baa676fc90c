import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AT, makeSmallFile } from '../../test/workshop/small-file.ts';
import { exportAsCsvZip, exportAsJson, writeCsv } from './export.ts';
import type { Storage } from './storage.ts';

const root = mkdtempSync(join(tmpdir(), 'gramwright-export-'));
let storage: Storage;
beforeAll(async () => {
  storage = await makeSmallFile(join(root, 'w.gramwright'));
});
afterAll(async () => {
  await storage.close();
  rmSync(root, { recursive: true });
});

describe('everything as JSON', () => {
  it('has every table with every row, blobs in base64, and survives being written down', async () => {
    const all = JSON.parse(JSON.stringify(await exportAsJson(storage))) as {
      tables: Record<string, Record<string, unknown>[]>;
    };
    const names = storage.handle
      .prepare("select name from sqlite_master where type = 'table' and name not like 'sqlite_%'")
      .all() as { name: string }[];
    expect(names.length).toBeGreaterThan(30);
    expect(Object.keys(all.tables).sort()).toEqual(names.map((row) => row.name).sort());
    for (const { name } of names) {
      const { n } = storage.handle.prepare(`select count(*) as n from ${name}`).get() as { n: number };
      expect(all.tables[name], name).toHaveLength(n);
    }
    expect(Buffer.from(String(all.tables.attachment?.[0]?.bytes), 'base64').toString('hex')).toBe(
      '00ff25504446',
    );
    expect(all.tables.movement?.map((row) => row.quantity)).toEqual([500_000_000, -1000]);
  });
});

describe('everything as CSV', () => {
  it('has one file a table with its columns, though it is empty', async () => {
    const files = unzipSync(await exportAsCsvZip(storage, AT));
    expect(Object.keys(files).length).toBeGreaterThan(30);
    const strikes = Buffer.from(files['strike.csv'] ?? []);
    expect(strikes.subarray(0, 3).toString('hex'), 'the UTF-8 mark').toBe('efbbbf');
    expect(strikes.subarray(3).toString()).toBe('entry_id,struck_entry_id,reason\r\n');
    expect(strFromU8(files['movement.csv'] ?? new Uint8Array())).toContain(',-1000,');
  });

  it('quotes what needs quotes (RFC 4180)', () => {
    expect(writeCsv(['a', 'b'], [{ a: 'one, "two"\nthree', b: null }])).toBe(
      '\ufeffa,b\r\n"one, ""two""\nthree",\r\n',
    );
  });

  it('keeps a spreadsheet from running a text as a formula; numbers stay numbers', () => {
    for (const text of ['=1+1', '+44 20', '-x', '@SUM(A1)', '\t=1', '\r=1', '=HYPERLINK("x")']) {
      expect(writeCsv(['t'], [{ t: text }]), text).toMatch(/^\ufefft\r\n"?'/);
    }
    expect(writeCsv(['n'], [{ n: -12 }])).toBe('\ufeffn\r\n-12\r\n');
    expect(writeCsv(['t'], [{ t: 'a=b' }])).toBe('\ufefft\r\na=b\r\n');
  });
});
