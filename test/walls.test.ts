import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

/**
 * The walls of the house: which room may import which (docs/architecture.md).
 * Read from the import lines of the source itself; tests may look anywhere.
 */
const MAY_IMPORT: Record<string, readonly string[]> = {
  core: [],
  reference: [],
  catalogue: ['core', 'reference'],
  words: ['core'],
  machine: ['core'],
  contract: ['core', 'catalogue'],
  check: ['core', 'reference', 'catalogue', 'contract', 'words'],
  storage: ['core', 'machine', 'contract'],
  work: ['core', 'reference', 'catalogue', 'check', 'contract', 'words', 'storage', 'machine', 'print'],
  print: ['core', 'words'],
  server: ['core', 'catalogue', 'contract', 'words', 'work', 'machine'],
  cli: ['core', 'catalogue', 'contract', 'words', 'server', 'work', 'machine'],
  web: ['core', 'reference', 'catalogue', 'check', 'contract', 'words', 'print'],
};

const root = resolve(import.meta.dirname, '..');
const IMPORT =
  /(?:^|\n)\s*(?:import|export)\s[^;]*?from\s*'([^']+)'|import\('([^']+)'\)|(?:^|\n)import\s*'([^']+)'/g;

interface ImportLine {
  readonly file: string;
  readonly target: string;
}

function importsOf(file: string): ImportLine[] {
  const text = readFileSync(join(root, file), 'utf8');
  return [...text.matchAll(IMPORT)].map((found) => ({
    file,
    target: found[1] ?? found[2] ?? found[3] ?? '',
  }));
}

const sourceFiles = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .map((file) => join('src', file))
  .filter((file) => /\.tsx?$/.test(file) && !file.includes('.test.'));
const allImports = sourceFiles.flatMap(importsOf);
const roomOf = (path: string): string => path.split('/')[1] ?? '';
const resolved = ({ file, target }: ImportLine): string => relative(root, join(root, dirname(file), target));
const localImports = allImports.filter(({ target }) => target.startsWith('.'));

describe('the walls of the house', () => {
  it('finds the source and its imports at all', () => {
    expect(sourceFiles.length).toBeGreaterThan(10);
    expect(localImports.length).toBeGreaterThan(10);
  });

  it('lets each room import only the rooms below it', () => {
    const broken = localImports
      .filter((line) => resolved(line).startsWith('src/'))
      .filter((line) => {
        const from = roomOf(line.file);
        const to = roomOf(resolved(line));
        return from !== to && !(MAY_IMPORT[from] ?? []).includes(to);
      });
    expect(broken).toEqual([]);
  });

  it('keeps source from reaching into tests, bench and example', () => {
    expect(localImports.filter((line) => !resolved(line).startsWith('src/'))).toEqual([]);
  });

  it('enters another room only by its public file', () => {
    const unitOf = (path: string): string =>
      path.startsWith('src/core/') || path.startsWith('src/print/')
        ? path.split('/').slice(0, 3).join('/')
        : path.split('/').slice(0, 2).join('/');
    const open = new Set(['src/core/problem.ts', 'src/core/problems-from-schema.ts']);
    const broken = localImports.filter((line) => {
      const target = resolved(line);
      return (
        unitOf(line.file) !== unitOf(target) &&
        !open.has(target) &&
        !target.endsWith('/index.ts') &&
        !target.endsWith('.css')
      );
    });
    expect(broken).toEqual([]);
  });

  it('keeps the machine out of the pure rooms', () => {
    const pure = ['core', 'reference', 'catalogue', 'check', 'contract', 'words', 'web'];
    const broken = allImports.filter(
      ({ file, target }) =>
        (pure.includes(roomOf(file)) || file.startsWith('src/print/layout/')) &&
        (target.startsWith('node:') ||
          ['better-sqlite3', 'kysely', 'hono', 'pino', 'pdfkit'].includes(target)),
    );
    expect(broken).toEqual([]);
  });

  it('keeps clock, chance and network out of core, work and print layout', () => {
    const forbidden =
      /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bcrypto\.random|\bfetch\(|\bprocess\.env\b/;
    const broken = sourceFiles
      .filter(
        (file) =>
          ['core', 'reference', 'catalogue', 'check', 'work', 'storage'].includes(roomOf(file)) ||
          file.startsWith('src/print/'),
      )
      .filter((file) => forbidden.test(readFileSync(join(root, file), 'utf8')));
    expect(broken).toEqual([]);
  });

  it('keeps decimal.js in core/quantity and SQL in storage', () => {
    const broken = allImports.filter(
      ({ file, target }) =>
        (target === 'decimal.js' && !file.startsWith('src/core/quantity/')) ||
        (['better-sqlite3', 'kysely'].includes(target) && roomOf(file) !== 'storage'),
    );
    expect(broken).toEqual([]);
  });
});
