import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildExample } from '../../../example/index.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { ingredientOrder } from '../../catalogue/index.ts';
import {
  checkDraft,
  type FormulaDraft,
  findRoom,
  type ReadFacts,
  type RoomView,
  readFacts,
  viewRoom,
} from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { expandFormula } from '../../core/formula/index.ts';
import { orderIngredients } from '../../core/label/index.ts';
import { must } from '../../core/problem.ts';
import { exact, sumOf, toText } from '../../core/quantity/index.ts';
import { say } from '../../words/index.ts';

const MARKETS = ['GB', 'NI', 'EU'] as const satisfies readonly Market[];
let bench: TestWorkshop;
beforeAll(async () => {
  bench = await openTestWorkshop({ isEmpty: true, buildExample });
  await bench.get('beginWorkshop', { body: { with: 'example' } });
}, 60_000);
afterAll(() => bench.close());

const written = async () => (await bench.get('listFormulas')).flatMap((one) => one.latest ?? []);
const factsOf = async (formulaId: string) =>
  readFacts(await bench.get('getCheckFacts', { params: { id: formulaId } }));
const roomOf = async (revisionId: string): Promise<RoomView> =>
  bench.get('getRoom', { params: { id: revisionId }, query: { markets: MARKETS.join(',') } });

/** What a check says that can break: limits that are over, the report, names on the label. */
function standingOf(facts: ReadFacts, draft: FormulaDraft) {
  const check = must(checkDraft(facts, draft, MARKETS));
  const stops = check.reasons.filter(({ code }) => /^sale-(over|supplier-over|prohibited)/.test(code));
  return {
    limit: stops.map(({ code, parameters }) => `${code} ${parameters.substance}`),
    report: (check.report?.rows ?? []).map(({ material, verdict }) => `${material} ${verdict}`),
    names: check.markets.map(({ named }) => named.map(({ labelName }) => labelName).sort()),
  };
}

/** By the label's own ordering: amounts of every name that has to stand before those whose order is free. */
function orderOf(facts: ReadFacts, draft: FormulaDraft) {
  const lines = draft.lines.map(({ itemKind, itemId, grams, stage }, index) => ({
    key: String(index),
    stage,
    grams,
    item:
      itemKind === 'formula'
        ? ({ kind: 'base', formulaId: itemId } as const)
        : ({ kind: 'material', id: itemId } as const),
  }));
  const recipe = { formulaId: 'draft', name: 'draft', lines };
  const { materials } = must(
    expandFormula('draft', {
      revision: () => recipe,
      base: (id) => (draft.standing === 'trial' ? facts.newest : facts.inForce).get(id),
    }),
  );
  const ingredients = materials.map(({ materialId, percent }) => ({
    name: facts.materials.get(materialId)?.inciEu ?? '',
    percent,
  }));
  const { list, anyOrderFrom } = must(orderIngredients(ingredients, [], ingredientOrder('GB')));
  const amountOf = (name: string) =>
    sumOf(ingredients.filter((one) => one.name === name).map(({ percent }) => percent));
  return { list, anyOrderFrom, amountOf };
}

const withGrams = (draft: FormulaDraft, place: number, grams: string): FormulaDraft => ({
  ...draft,
  lines: draft.lines.map((line, index) => (index === place ? { ...line, grams } : line)),
});

/** A label that was printed for the one composition is right for the other as well. */
function isListStillRight(printed: ReturnType<typeof orderOf>, now: ReturnType<typeof orderOf>): boolean {
  return now.list.slice(0, now.anyOrderFrom).every((name) => {
    const before = printed.list.slice(0, printed.list.indexOf(name));
    return before.every((other) => now.amountOf(other).gte(now.amountOf(name)));
  });
}

const KINDS = ['label', 'report', 'limit'] as const;

describe('room to move, in the formulas of the example', () => {
  it('is there up to each bound and gone beyond it, by the check itself', async () => {
    const met = new Set<string>();
    for (const { id, formulaId, details } of await written()) {
      const facts = await factsOf(formulaId);
      const room = await roomOf(id);
      const now = standingOf(facts, details);
      const list = orderOf(facts, details);
      const standsAsNow = (draft: FormulaDraft) => {
        const then = standingOf(facts, draft);
        return {
          limit: then.limit.every((one) => now.limit.includes(one)),
          report: then.report.every((one) => now.report.includes(one)),
          label:
            JSON.stringify(then.names) === JSON.stringify(now.names) &&
            isListStillRight(list, orderOf(facts, draft)),
        };
      };
      for (const [place, line] of room.lines.entries()) {
        for (const direction of ['up', 'down'] as const) {
          for (const kind of KINDS) {
            const bound = line[direction][kind];
            if (!bound) continue;
            met.add(`${kind} ${direction}`);
            // A microgram of a recipe is far from a percentage's last place: three go past the bound and its rounding.
            const beyond = exact(bound.grams).plus(direction === 'up' ? '0.000003' : '-0.000003');
            expect(standsAsNow(withGrams(details, place, bound.grams))[kind]).toBe(true);
            if (beyond.gt(0))
              expect(standsAsNow(withGrams(details, place, toText(beyond)))[kind]).toBe(false);
          }
        }
      }
    }
    expect([...met].sort()).toEqual([
      'label down',
      'label up',
      'limit down',
      'limit up',
      'report down',
      'report up',
    ]);
  }, 60_000);

  it('is the same worked out by a page from what the check hangs on', async () => {
    for (const { id, formulaId, details } of await written()) {
      const facts = await factsOf(formulaId);
      const found = must(findRoom(facts, details, MARKETS));
      expect(viewRoom(facts, details, found)).toEqual(await roomOf(id));
    }
  });

  it('is said in sentences that name what breaks first', async () => {
    const butter = (await written()).find((one) => one.lines.length === 3);
    if (!butter) throw new Error('the example has a butter with two oils');
    const said = (await roomOf(butter.id)).lines.flatMap(({ says }) => says.map((each) => say(each)));
    const shape =
      /^.+ may (not )?(rise|fall)|^Nothing|^.+, now [\d.]+ %: (above|below|at) |^With any (more|less) of /;
    expect(said.filter((each) => !shape.test(each))).toEqual([]);
    // A name that may come off the label is no danger: no sentence says that something breaks before it.
    const ofLabel = said.filter((each) => each.includes('need no longer stand on the label'));
    expect(ofLabel.length).toBeGreaterThan(0);
    for (const each of ofLabel) expect(each).toMatch(/: (above|below|at) [\d.]+ %/);
    expect(said.filter((each) => / before .*label/.test(each))).toEqual([]);
    expect(said.some((each) => / before .+\.$/.test(each))).toBe(true);
  });

  it('refuses a market that is none and a revision that is not there', async () => {
    const [any] = await written();
    const asked = (id: string, markets: string) =>
      bench.ask('getRoom', { params: { id }, query: { markets } });
    expect(await asked(any?.id ?? '', 'XX')).toMatchObject({ problems: [{ code: 'value-not-one-of' }] });
    expect(await asked('nobody', 'GB')).toMatchObject({ problems: [{ code: 'thing-not-found' }] });
  });
});
