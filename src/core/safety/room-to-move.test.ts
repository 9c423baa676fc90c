import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundSafetyTables, ingredientOrder } from '../../catalogue/index.ts';
import { orderIngredients } from '../label/index.ts';
import { Fraction, fractionOf } from '../linear/index.ts';
import { must } from '../problem.ts';
import { type Exact, exact, sumOf } from '../quantity/index.ts';
import {
  findRoomToMove,
  judgeLimits,
  nameAllergens,
  type PartContents,
  type RoomLabel,
  type RoomQuestion,
  type RoomSide,
} from './index.ts';

const tables = boundSafetyTables();
const context = { market: 'EU', use: 'leave-on', category: '5A', date: '2026-11-26' } as const;
const naming = { market: 'EU', use: 'leave-on', firstSupplied: '2026-11-26' } as const;
const body = { context, about: 'EU' };

const part = (name: string, constituents: Record<string, number | string> = {}): PartContents => [
  { name, percent: 100 },
  ...Object.entries(constituents).map(
    ([each, percent]) => ({ name: each, origin: 'natural', percent }) as const,
  ),
];
const spearmint = part('Spearmint oil', { carvone: 80 });
const lavender = part('Lavender oil', { linalool: 40, geraniol: '0.5' });
const shea = part('Shea butter');
const starch = part('Tapioca starch');

/** Each line is an ingredient by its own name, in the order in which a label lists them. */
function labelOf(parts: readonly PartContents[], percents: readonly string[]): RoomLabel {
  const names = parts.map(([itself]) => itself?.name ?? '');
  const lines = names.map((name, index) => ({ name, percent: percents[index] ?? '0' }));
  const { list } = must(orderIngredients(lines, [], ingredientOrder('EU')));
  return {
    about: 'EU',
    naming,
    order: ingredientOrder('EU'),
    ingredients: list.map((name) => ({
      name,
      isColourant: false,
      weights: names.map((each) => fractionOf(each === name ? 1 : 0)),
    })),
  };
}

const find = (
  parts: readonly PartContents[],
  percents: readonly string[],
  more: Partial<RoomQuestion> = {},
) =>
  findRoomToMove(tables, {
    parts,
    percents: percents.map(fractionOf),
    places: [body],
    ownBounds: [],
    labels: [labelOf(parts, percents)],
    ...more,
  });
const shown = (side: RoomSide | undefined) =>
  Object.fromEntries(
    Object.entries(side ?? {}).map(([kind, { percent, isIncluded, breaks }]) => [
      kind,
      `${isIncluded ? '' : 'not '}${percent.toFixed()} ${breaks.what}`,
    ]),
  );

describe('room to move', () => {
  it('is what a limit leaves, to the last digit, and the limit itself is allowed', () => {
    // IFRA Standards, 49th Amendment, category 5A: carvone 0.2 %; 0.2 / 0.8 = 0.25 % of the oil.
    const { lines, broken } = find([shea, spearmint], ['99.9', '0.1']);
    const [, oil] = lines;
    expect(broken).toEqual([]);
    expect(shown(oil?.room?.up)).toMatchObject({ limit: '0.25 limit' });
    expect(oil?.room?.up.limit).toMatchObject({ breaks: { name: 'carvone' }, about: ['EU'] });
    expect(oil?.room?.down.limit).toBeUndefined();
  });

  it('counts what the rest brings in, of which there is less the more there is of the line', () => {
    // 0.8 x + 0.001 (100 - x) <= 0.2, so x <= 0.1 / 0.799.
    const spiced = part('Shea butter', { carvone: '0.1' });
    const { lines } = find([spiced, spearmint], ['99.9', '0.1']);
    expect(lines[1]?.room?.up.limit?.percent.toFixed(9)).toBe('0.125156446');
    // The rest may fall until there is too much of the oil: the same point, seen from the other line.
    expect(lines[0]?.room?.down.limit?.percent.toFixed(9)).toBe('99.874843554');
  });

  it('ends where an allergen has to be named, and where it need not be any more', () => {
    // Named over 0.001 % (Annex III after Regulation (EU) 2023/1545): 40 % of the oil, so from 0.0025 % on.
    const unnamed = find([shea, part('A scent', { linalool: 40 })], ['99.999', '0.001']);
    expect(shown(unnamed.lines[1]?.room?.up)).toMatchObject({ label: '0.0025 name-added' });
    const named = find([shea, part('A scent', { linalool: 40 })], ['99.9', '0.1']);
    expect(shown(named.lines[1]?.room?.down)).toMatchObject({ label: 'not 0.0025 name-dropped' });
  });

  it('does not count as a new name what stands in the list already', () => {
    const linalool = part('linalool');
    const { lines } = find([shea, linalool], ['99.9995', '0.0005']);
    expect(lines[1]?.room?.up.label?.breaks.what).not.toBe('name-added');
  });

  it('ends where the order of the list changes, which is free below one percent', () => {
    const { lines } = find([shea, starch, part('Beeswax')], ['90', '6', '4']);
    // Starch overtakes butter where x = 90 (100 - x) / 94; for that much itself either order is right.
    expect(shown(lines[1]?.room?.up)).toMatchObject({ label: '48.91304347826 order' });
    // Starch and wax are level where x = 4 (100 - x) / 94.
    expect(lines[1]?.room?.down.label?.percent.toFixed(9)).toBe('4.081632653');
    const little = find([shea, starch, part('Beeswax')], ['99', '0.6', '0.4']);
    // Wax may overtake starch freely as long as it is below one percent; at one percent it no longer may.
    expect(shown(little.lines[2]?.room?.up)).toMatchObject({ label: 'not 1 order' });
  });

  it('keeps to the report on both sides, and to what a supplier allows', () => {
    const told = { kind: 'assessor', source: 'R 1' } as const;
    const weights = [fractionOf(0), fractionOf(1)];
    const range = [
      { name: 'Lavender oil', told, weights, most: fractionOf('0.8') },
      {
        name: 'Lavender oil',
        told,
        weights: weights.map((each) => each.negated()),
        most: fractionOf('-0.2'),
      },
      { name: 'Lavender oil', told: { kind: 'supplier' } as const, weights, most: fractionOf('0.7') },
    ];
    const [, oil] = find([shea, lavender], ['99.5', '0.5'], { ownBounds: range, places: [] }).lines;
    expect(shown(oil?.room?.up)).toMatchObject({ report: '0.8 report', limit: '0.7 limit' });
    expect(shown(oil?.room?.down)).toMatchObject({ report: '0.2 report' });
    expect(oil?.room?.down.report?.breaks).toMatchObject({ side: 'least' });
  });

  it('names every market that a bound holds in, once', () => {
    const { lines } = find([shea, spearmint], ['99.9', '0.1'], {
      places: [body, { context: { ...context, market: 'NI' }, about: 'NI' }],
    });
    expect(lines[1]?.room?.up.limit?.about).toEqual(['EU', 'NI']);
  });

  it('leaves no room upward where the amount lies on the limit', () => {
    const { lines, broken } = find([shea, spearmint], ['99.75', '0.25']);
    expect(shown(lines[1]?.room?.up)).toMatchObject({ limit: '0.25 limit' });
    expect(broken).toEqual([]);
  });

  it('says what is broken already, and of a single line that nothing else could give way', () => {
    const over = find([shea, spearmint], ['99.7', '0.3']);
    expect(over.broken).toMatchObject([{ breaks: { what: 'limit', name: 'carvone' }, about: ['EU'] }]);
    expect(over.lines[1]?.room?.up.limit).toBeUndefined();
    expect(find([shea], ['100']).lines).toEqual([{ room: undefined }]);
  });

  it('ends where nothing of it is left', () => {
    const { lines } = find([shea, starch], ['95', '5']);
    expect(shown(lines[1]?.room?.down)).toMatchObject({ label: 'not 0 leaves-list' });
  });
});

const POOL = [
  shea,
  spearmint,
  lavender,
  starch,
  part('Clove bud oil', { eugenol: 88, 'methyl eugenol': '0.13' }),
  part('Scented base', { eugenol: '0.2', limonene: '0.05' }),
];

/** The formula with this line at x percent and all others in their proportions, to sixty digits. */
function moved(percents: readonly string[], place: number, x: Exact): Exact[] {
  const rest = exact(100).minus(percents[place] ?? 0);
  return percents.map((percent, index) =>
    index === place ? x : exact(percent).times(exact(100).minus(x)).div(rest),
  );
}

const contributionsOf = (parts: readonly PartContents[], percents: readonly Exact[]) =>
  parts.flatMap((contents, index) =>
    contents.map(({ percent, ...one }) => ({
      ...one,
      percent: exact(String(percent))
        .times(percents[index] ?? 0)
        .div(100),
    })),
  );

const overLimits = (parts: readonly PartContents[], percents: readonly Exact[]): string[] =>
  judgeLimits(tables, { ...context, contributions: contributionsOf(parts, percents) })
    .verdicts.filter(({ verdict, reason }) => verdict === 'over' || reason === 'counted-as-other')
    .map(({ name, kind, ruleId }) => [kind, name, ruleId].join('|'));

const namesOf = (parts: readonly PartContents[], percents: readonly Exact[]): string[] =>
  nameAllergens(tables, { ...naming, contributions: contributionsOf(parts, percents) })
    .named.map(({ labelName }) => labelName)
    .sort();

/** As Article 19(1)(g) has it: in descending order, but for what is below one percent, which follows in any. */
function isRightOrder(list: readonly string[], parts: readonly PartContents[], percents: readonly Exact[]) {
  const amountOf = (name: string) =>
    sumOf(parts.map(([itself], index) => (itself?.name === name ? (percents[index] ?? 0) : 0)));
  const amounts = list.map(amountOf);
  return amounts.every(
    (amount, index) => amount.lt(1) || amounts.slice(0, index).every((before) => before.gte(amount)),
  );
}

describe('room to move in any formula', () => {
  const parts = fc.uniqueArray(fc.integer({ min: 0, max: POOL.length - 1 }), {
    minLength: 2,
    maxLength: 4,
  });
  const shares = fc.array(fc.integer({ min: 1, max: 2000 }), { minLength: 4, maxLength: 4 });

  it('holds up to every bound and breaks beyond it, by the checks themselves', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(parts, shares, (chosen, weights) => {
        const contents = chosen.map((index) => POOL[index] ?? shea);
        const whole = weights.slice(0, contents.length).reduce((sum, each) => sum + each, 0);
        const exactly = contents.map(
          (_, index) => new Fraction(BigInt(weights[index] ?? 1) * 100n, BigInt(whole)),
        );
        const percents = exactly.map((each) => each.roundedDown(30).toFixed());
        const label = labelOf(contents, percents);
        const list = label.ingredients.map(({ name }) => name);
        const answer = find(contents, percents, { percents: exactly, labels: [label] });
        const overNow = overLimits(contents, percents.map(exact));
        const named = namesOf(contents, percents.map(exact));
        for (const [place, { room }] of answer.lines.entries()) {
          for (const direction of ['up', 'down'] as const) {
            for (const [kind, bound] of Object.entries(room?.[direction] ?? {})) {
              const { what } = bound.breaks;
              if (what === 'leaves-list') continue;
              met.add(`${what} ${direction}`);
              const step = direction === 'up' ? '1e-9' : '-1e-9';
              const inside = moved(percents, place, bound.percent.minus(step));
              const beyond = moved(percents, place, bound.percent.plus(step));
              if (kind === 'limit') {
                // What is over as it is may come within on the way; nothing else is over before the bound is reached.
                const isNew = (name: string) => !overNow.includes(name);
                expect(overLimits(contents, inside).filter(isNew)).toEqual([]);
                expect(overLimits(contents, beyond).filter(isNew)).not.toEqual([]);
              }
              if (kind === 'label') {
                const holds = (at: Exact[]) =>
                  isRightOrder(list, contents, at) && namesOf(contents, at).join() === named.join();
                expect(holds(inside)).toBe(true);
                expect(holds(beyond)).toBe(false);
              }
            }
          }
        }
      }),
      { numRuns: 60 },
    );
    expect([...met].sort()).toEqual([
      'limit down',
      'limit up',
      'name-added down',
      'name-added up',
      'name-dropped down',
      'name-dropped up',
      'order down',
      'order up',
    ]);
  });
});
