import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'gramwright-scripts-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly reasons: readonly string[];
}
/** As the script does it, in a plain Node. */
function count(report: object): Count {
  const code = `import { countTests } from '${join(root, 'scripts/count-tests.mjs')}';
    console.log(JSON.stringify(countTests(${JSON.stringify(report)})))`;
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', code], {
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  return JSON.parse(stdout) as Count;
}
const report = {
  success: true,
  numPassedTests: 12,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [] as object[],
};

describe('counting the tests', () => {
  it('passes what passed', () => {
    expect(count(report)).toEqual({ passed: 12, failed: 0, reasons: [] });
  });

  it.each([
    ['a failed test', { success: false, numFailedTests: 1 }],
    ['a skipped test', { numPendingTests: 1 }],
    ['a test still to be written', { numTodoTests: 1 }],
    [
      'a file that could not be run',
      { testResults: [{ name: 'x', status: 'failed', assertionResults: [] }] },
    ],
    ['a run that failed outside of any test', { success: false }],
    ['nothing at all', { numPassedTests: 0 }],
  ])('fails on %s', (_what, more) => {
    expect(count({ ...report, ...more }).failed).toBe(1);
  });
});

describe('the continuous run', () => {
  /** An npm that says what a test run would. */
  function runWith(script: string) {
    const npm = join(folder, 'npm');
    writeFileSync(npm, `#!/bin/sh\n${script}\n`);
    chmodSync(npm, 0o755);
    const { status, stdout } = spawnSync(join(root, '.ci/run'), {
      encoding: 'utf8',
      env: { ...process.env, PATH: `${folder}:${process.env.PATH}` },
    });
    return { status, last: stdout.trimEnd().split('\n').at(-1) };
  }

  it('ends with the count, and well', () => {
    expect(runWith("echo '3 passed, 0 failed'")).toEqual({ status: 0, last: '3 passed, 0 failed' });
  });

  it('hands a failure on, and the count still stands last', () => {
    const script = "echo '3 passed, 2 failed'; echo 'npm error code 1' >&2; exit 1";
    expect(runWith(script)).toEqual({ status: 1, last: '3 passed, 2 failed' });
  });

  it('fails where nothing was counted', () => {
    expect(runWith('exit 0')).toEqual({ status: 1, last: '0 passed, 1 failed' });
    expect(runWith('exit 7')).toEqual({ status: 7, last: '0 passed, 1 failed' });
  });
});
