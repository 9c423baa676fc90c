import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { endCli, startCli } from '../workshop/run-cli.ts';

/** Every command of the guides is run as it stands there, and answers what stands below it. */
const root = resolve(import.meta.dirname, '../..');
const home = mkdtempSync(join(tmpdir(), 'gramwright-docs-'));

interface Command {
  readonly where: string;
  readonly line: string;
  /** What has to be in its answer. */
  readonly answer: object | null;
}

const PAGES = ['README.md', ...readdirSync(join(root, 'docs')).map((name) => `docs/${name}`)].filter((name) =>
  name.endsWith('.md'),
);
const BLOCKS = /```sh\n([\s\S]*?)```(?:\s*```json\n([\s\S]*?)```)?/g;

const commandsOf = (page: string): Command[] =>
  [...readFileSync(join(root, page), 'utf8').matchAll(BLOCKS)].flatMap(([, lines = '', answer]) =>
    lines
      .split('\n')
      .filter((line) => line.startsWith('node bin/gramwright') && !line.includes(' start '))
      .map((line) => ({
        where: page,
        line,
        answer: answer === undefined ? null : (JSON.parse(answer) as object),
      })),
  );
const commands = PAGES.flatMap(commandsOf);

beforeAll(async () => {
  // What a command writes beside it is not to lie in the checkout.
  symlinkSync(join(root, 'bin'), join(home, 'bin'));
  const started = await startCli(['--folder', join(home, 'my-workshop')], {});
  await endCli(started.child);
});
afterAll(() => rmSync(home, { recursive: true }));

describe('the commands in the guides', () => {
  it('are there to be run', () => {
    expect(commands.length).toBeGreaterThan(8);
    expect(commands.filter(({ answer }) => answer !== null).length).toBeGreaterThan(4);
  });

  it.each(commands)('$where: $line', ({ line, answer }) => {
    const { status, stdout, stderr } = spawnSync('sh', ['-c', line], {
      cwd: home,
      env: { ...process.env, HOME: home },
      encoding: 'utf8',
    });
    expect(stderr).toBe('');
    expect(status).toBe(0);
    if (answer !== null)
      expect(JSON.parse(stdout)).toMatchObject(withoutListEnds(answer, JSON.parse(stdout)));
  });
});

/** A guide shows the first rows of a list: as many are compared. */
function withoutListEnds(shown: unknown, whole: unknown): object {
  if (Array.isArray(shown) && Array.isArray(whole))
    return [...shown.map((row, index) => withoutListEnds(row, whole[index])), ...whole.slice(shown.length)];
  if (typeof shown !== 'object' || shown === null) return shown as object;
  const rows = whole as Record<string, unknown> | undefined;
  return Object.fromEntries(
    Object.entries(shown).map(([key, value]) => [key, withoutListEnds(value, rows?.[key])]),
  );
}
