import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildExample } from '../../../example/index.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { checkDraft, findScent, type ReadFacts, readFacts } from '../../check/index.ts';
import { must } from '../../core/problem.ts';
import { exact, toText } from '../../core/quantity/index.ts';

let bench: TestWorkshop;
beforeAll(async () => {
  bench = await openTestWorkshop({ isEmpty: true, buildExample });
  await bench.get('beginWorkshop', { body: { with: 'example' } });
}, 60_000);
afterAll(() => bench.close());

async function orangeButter() {
  const formula = (await bench.get('listFormulas')).find((one) => one.latest?.lines.length === 3);
  if (!formula?.latest) throw new Error('the example has a butter with two oils');
  const facts = readFacts(await bench.get('getCheckFacts', { params: { id: formula.id } }));
  return { facts, draft: formula.latest.details };
}
type Draft = Awaited<ReturnType<typeof orangeButter>>['draft'];

/** The same formula with so much of each oil in a hundred grams. */
function withOils(draft: Draft, percents: readonly string[]): Draft {
  const scent = percents.reduce((sum, each) => sum.plus(each), exact(0));
  const grams = [toText(exact(100).minus(scent)), ...percents];
  return { ...draft, lines: draft.lines.map((line, index) => ({ ...line, grams: grams[index] ?? '0' })) };
}
const stops = (facts: ReadFacts, draft: Draft) =>
  must(checkDraft(facts, draft, ['GB', 'NI']))
    .reasons.map(({ code }) => code)
    .filter((code) => code.startsWith('sale-over') || code.startsWith('sale-report-over'));

describe('how much scent the example’s butter may have', () => {
  it('is what the check just allows, and a step more is over', async () => {
    const { facts, draft } = await orangeButter();
    const oils = [
      { line: 1, share: 3 },
      { line: 2, share: 2 },
    ];
    const found = must(findScent(facts, draft, { oils, markets: ['GB', 'NI'] }));
    expect(found.verdict).toBe('found');
    const [orange = exact(0), cedar = exact(0)] = found.percents;
    // The ledger's and the recipe's grams go down to the microgram.
    const down = [orange, cedar].map((each) => toText(each.toDecimalPlaces(6, 1)));
    expect(stops(facts, withOils(draft, down))).toEqual([]);
    const above = [orange, cedar].map((each) => toText(each.times('1.0001').toDecimalPlaces(6, 0)));
    expect(stops(facts, withOils(draft, above))).not.toEqual([]);
    expect(found.relief?.percent.gt(found.percent ?? 0)).toBe(true);
  });

  it('is more where the proportions are free, and hangs on the report', async () => {
    const { facts, draft } = await orangeButter();
    const fixed = must(
      findScent(facts, draft, {
        oils: [
          { line: 1, share: 3 },
          { line: 2, share: 2 },
        ],
        markets: ['GB'],
      }),
    );
    const free = must(
      findScent(facts, draft, {
        oils: [
          { line: 1, share: ['0', '1'] },
          { line: 2, share: ['0', '1'] },
        ],
        markets: ['GB'],
      }),
    );
    expect(free.percent?.gte(fixed.percent ?? 0)).toBe(true);
    // The report allows 1 % of orange and 0.8 % of cedar, of which cedrene lets in less.
    expect(free.decidedBy?.told.kind).toMatch(/assessor|ifra/);
  });

  it('tells of a bound that asks for at least so much of what gives way to the scent', async () => {
    const { facts, draft } = await orangeButter();
    const oils = [
      { line: 1, share: 3 },
      { line: 2, share: 2 },
    ];
    const { limits, percent } = must(findScent(facts, draft, { oils, markets: ['GB'] }));
    // The report of the example asks for 38 % of shea butter at the least.
    const shea = limits.find(({ leastPercent }) => leastPercent !== undefined);
    expect(shea).toMatchObject({ name: 'Shea butter', leastPercent: '38' });
    const reached = exact(percent ?? 0).div(shea?.shareOfLimit ?? 1);
    const codesAt = (part: string) => {
      const total = reached.times(part);
      const split = ['0.6', '0.4'].map((share) => toText(total.times(share).toDecimalPlaces(6)));
      return must(checkDraft(facts, withOils(draft, split), ['GB'])).reasons.map(
        ({ code, parameters }) => `${code} ${parameters.substance}`,
      );
    };
    expect(codesAt('0.999')).not.toContain('sale-report-below Shea butter');
    expect(codesAt('1.001')).toContain('sale-report-below Shea butter');
  });

  it('refuses a formula that is nothing but scent', async () => {
    const { facts, draft } = await orangeButter();
    const oils = [0, 1, 2].map((line) => ({ line, share: 1 }));
    expect(findScent(facts, draft, { oils, markets: ['GB'] })).toMatchObject({
      problems: [{ code: 'nothing-but-scent' }],
    });
  });
});
