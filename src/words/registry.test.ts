import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';
import { patterns } from './patterns.en-gb.ts';
import { problemRooms, problems, sayingRooms, sayings } from './registry.ts';

const src = resolve(import.meta.dirname, '..');
const isSource = (file: string): boolean =>
  /\.tsx?$/.test(file) &&
  !file.includes('.test.') &&
  !file.startsWith('words/') &&
  !file.startsWith('reference/');
const source = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter(isSource)
  .map((file) => ({ file, text: readFileSync(join(src, file), 'utf8') }));

const CODE = "'([a-z][a-z0-9]*(?:-[a-z0-9]+)*)'";
/** `problem('a', ...)`, `problem(x ? 'a' : 'b', ...)`. */
const PROBLEM_CALL = /\bproblem\(\s*([^,()]*?(?:\([^()]*\))?[^,()]*?)\s*,/g;
/** `saying('a', ...)`, `saying(x ? 'a' : 'b')`. */
const SAYING_CALL = /\bsaying\(\s*([^,()]*?)\s*[,)]/g;
/** `{ code: 'a', parameters`, `{ code: x ? 'a' : 'b', parameters`. */
const SAYING_DATA = /\bcode:\s*([^,;{}]*?),\s*parameters/g;

const codesIn = (expression: string): string[] =>
  [...expression.replace(/[!=]==?\s*'[^']*'/g, '').matchAll(new RegExp(CODE, 'g'))].map(
    (found) => found[1] ?? '',
  );

const used = (call: RegExp): Map<string, string> =>
  new Map(
    source.flatMap(({ file, text }) =>
      [...text.matchAll(call)].flatMap((found) =>
        codesIn(found[1] ?? '').map((code) => [code, file] as const),
      ),
    ),
  );

const missing = (codes: Map<string, string>, words: ReadonlyMap<string, unknown>): string[] =>
  [...codes].filter(([code]) => !words.has(code)).map(([code, file]) => `${code} in ${file}`);

/** What the readers of contract/fields.ts answer: codes that no `problem(` call names. */
const fieldCodes = (): Map<string, string> => {
  const { file, text } = source.find((it) => it.file === 'contract/fields.ts') ?? { file: '', text: '' };
  const answers = [...text.matchAll(new RegExp(String.raw`(?:return|\?)\s*${CODE}`, 'g'))];
  return new Map(answers.map((found) => [found[1] ?? '', file]));
};

describe('the registry of words', () => {
  it('holds every file of problems/ and sayings/', () => {
    const registry = readFileSync(join(src, 'words/registry.ts'), 'utf8');
    const files = ['problems', 'sayings'].flatMap((folder) =>
      readdirSync(join(src, 'words', folder)).map((file) => `./${folder}/${file}`),
    );
    expect(files.length).toBeGreaterThan(1);
    expect(files.filter((file) => !registry.includes(`'${file}'`))).toEqual([]);
  });

  it('has each code once', () => {
    for (const rooms of [problemRooms, sayingRooms]) {
      const codes = Object.values(rooms).flatMap((room) => Object.keys(room));
      expect(codes.filter((code, place) => codes.indexOf(code) !== place)).toEqual([]);
    }
  });

  it('has a sentence for every problem that the source can make', () => {
    const codes = new Map([...used(PROBLEM_CALL), ...fieldCodes()]);
    expect(codes.size).toBeGreaterThan(30);
    expect(missing(codes, problems)).toEqual([]);
  });

  it('has a sentence for every saying that the source can make', () => {
    expect(missing(new Map([...used(SAYING_CALL), ...used(SAYING_DATA)]), sayings)).toEqual([]);
  });

  it('has no sentence that nothing uses', () => {
    const everything = source.map(({ text }) => text).join('\n');
    const orphans = [...problems.keys(), ...sayings.keys()].filter(
      (code) => !everything.includes(`'${code}'`),
    );
    expect(orphans).toEqual([]);
  });

  it('parses every sentence', () => {
    const texts = [...sayings.values(), ...[...problems.values()].flatMap(({ says, mend }) => [says, mend])];
    for (const text of texts) {
      expect(() => new IntlMessageFormat(text, 'en-GB'), text).not.toThrow();
      expect(text, 'a brace in quotes is no parameter').not.toMatch(/'[{}]/);
    }
  });

  it('says in words how a text has to be written, for each pattern of contract and catalogue', () => {
    const contract = source
      .filter(({ file }) => /^(contract|catalogue)\//.test(file))
      .map(({ text }) => text);
    const found = contract.flatMap((text) =>
      [...text.matchAll(/\.regex\((\/.*?\/)\)/g)].map((it) => it[1] ?? ''),
    );
    expect(found.length).toBeGreaterThan(3);
    expect([...new Set(found)].filter((pattern) => !(pattern in patterns))).toEqual([]);
  });
});
