import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { run } from './run.ts';

const said = { stdout: '', stderr: '' };
beforeEach(() => {
  Object.assign(said, { stdout: '', stderr: '' });
  for (const name of ['stdout', 'stderr'] as const) {
    vi.spyOn(process[name], 'write').mockImplementation((text) => {
      said[name] += String(text);
      return true;
    });
  }
});
afterEach(() => {
  vi.restoreAllMocks();
});

async function calc(args: readonly string[]) {
  Object.assign(said, { stdout: '', stderr: '' });
  const status = await run(['calc', ...args]);
  return { status, ...said };
}
const INPUT = '{"nominal": 60, "unit": "g"}';

describe('gramwright calc', () => {
  it('prints the answer as JSON and nothing else', async () => {
    const { status, stdout, stderr } = await calc(['tolerable-error', INPUT]);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    // Directive 76/211/EEC, Annex I, 2.4: 50 to 100 g have a tolerable negative error of 4.5 g.
    expect(JSON.parse(stdout)).toMatchObject({ tolerableError: 4.5, limit1: 55.5 });
  });

  it('lists the catalogue as JSON', async () => {
    const { status, stdout } = await calc([]);
    expect(status).toBe(0);
    const list = JSON.parse(stdout) as { name: string; title: string }[];
    expect(list.map((it) => it.name)).toContain('tolerable-error');
  });

  it('ends with 0 whatever the verdict', async () => {
    const weights = [55, 55, 55];
    const { status, stdout } = await calc([
      'batch-weight-test',
      JSON.stringify({ nominalGrams: 60, batchSize: 3, weightsGrams: weights }),
    ]);
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ verdict: 'reject' });
  });

  it.each([
    [
      'an unknown field',
      ['tolerable-error', '{"nominal":60,"unit":"g","colour":"red"}'],
      'field-unknown',
      'colour',
    ],
    ['a value out of range', ['tolerable-error', '{"nominal":-1,"unit":"g"}'], 'value-too-small', 'nominal'],
    ['broken JSON', ['tolerable-error', '{nominal:60}'], 'json-broken', 'input'],
    ['an unknown name', ['tolerable-errors', INPUT], 'calculation-unknown', 'name'],
    ['nothing', ['tolerable-error', ''], 'input-missing', 'input'],
    ['a list instead of fields', ['tolerable-error', '[1]'], 'field-wrong-type', 'input'],
  ])('refuses %s with status 2, as a problem on standard error', async (_what, args, code, where) => {
    const { status, stdout, stderr } = await calc(args);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    const { problems } = JSON.parse(stderr) as { problems: Record<string, unknown>[] };
    expect(problems[0]).toMatchObject({ code, where, says: expect.any(String), mend: expect.any(String) });
  });

  it('helps with fields, units, equation, sources and an example that runs', async () => {
    const before = await calc(['--help', 'tolerable-error']);
    const after = await calc(['tolerable-error', '--help']);
    expect(before).toEqual(after);
    expect(before.status).toBe(0);
    for (const part of [
      'nominal',
      'in the unit given',
      'limit 1 = Qn - T',
      '76/211/EEC',
      "gramwright calc tolerable-error '",
    ]) {
      expect(before.stdout).toContain(part);
    }
    const example = /calc tolerable-error '(\{.*\})'/.exec(before.stdout)?.[1] ?? '';
    expect((await calc(['tolerable-error', example])).status).toBe(0);
  });
});
