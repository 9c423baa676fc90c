import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, sumOf } from '../quantity/index.ts';
import { readBowlEvents } from './bowl-events.ts';
import { type BowlEvent, findBowlGrams, findStageYields } from './stage-yields.ts';

const shown = (events: readonly BowlEvent[]) =>
  findStageYields(events).map((stage) => [
    stage.name,
    stage.expectedGrams.toFixed(),
    stage.foundGrams.toFixed(),
    stage.lossGrams.toFixed(),
    stage.lossPercent.toFixed(2),
  ]);

describe('what each stage left behind', () => {
  it('is told from weighing to weighing, with what went in since', () => {
    expect(
      shown([
        { kind: 'in', grams: '700' },
        { kind: 'weighed', name: 'Melted', grams: '693' },
        { kind: 'in', grams: '300' },
        { kind: 'weighed', name: 'Strained', grams: '980' },
        { kind: 'made', name: 'Whipped', grams: '970' },
        { kind: 'filled', name: 'Filled', grams: '950.6' },
      ]),
    ).toEqual([
      ['Melted', '700', '693', '7', '1.00'],
      ['Strained', '993', '980', '13', '1.31'],
      ['Whipped', '980', '970', '10', '1.02'],
      ['Filled', '970', '950.6', '19.4', '2.00'],
    ]);
  });

  it('is less than nothing where more is there than can be', () => {
    expect(
      shown([
        { kind: 'in', grams: '100' },
        { kind: 'made', name: 'M', grams: '101' },
      ]),
    ).toEqual([['M', '100', '101', '-1', '-1.00']]);
    expect(shown([{ kind: 'made', name: 'M', grams: '5' }])).toEqual([['M', '0', '5', '-5', '0.00']]);
    expect(findStageYields([])).toEqual([]);
  });

  it('adds up to all that went in less what was found last', () => {
    const grams = fc.integer({ min: 1, max: 2_000_000 }).map((milligrams) => exact(milligrams).div(1000));
    const event: fc.Arbitrary<BowlEvent> = fc.oneof(
      grams.map((each) => ({ kind: 'in' as const, grams: each })),
      grams.map((each) => ({ kind: 'weighed' as const, name: 'w', grams: each })),
    );
    fc.assert(
      fc.property(fc.array(event), grams, (events, last) => {
        const all: BowlEvent[] = [...events, { kind: 'made', name: 'm', grams: last }];
        const wentIn = sumOf(events.flatMap((each) => (each.kind === 'in' ? [each.grams] : [])));
        const lost = sumOf(findStageYields(all).map((stage) => stage.lossGrams));
        expect(lost.eq(wentIn.minus(last))).toBe(true);
        expect(findBowlGrams(all).eq(last)).toBe(true);
      }),
    );
  });

  it('reads screens: what lies in, and what steps weighed; a cup is no bowl', () => {
    const weighed = { grossGrams: '812.5', tareGrams: '120' };
    expect(
      readBowlEvents([
        { kind: 'addition', inGrams: '700' },
        { kind: 'step', stepKind: 'weigh', what: 'Weigh what melted', done: { weighed } },
        { kind: 'step', stepKind: 'cup', what: 'Cup', done: { weighed } },
        { kind: 'step', stepKind: 'weigh', what: 'Not weighed', done: { weighed: null } },
        { kind: 'step', stepKind: 'mix', what: 'Mix', done: null },
      ]).map((each) => ({ ...each, grams: exact(each.grams).toFixed() })),
    ).toEqual([
      { kind: 'in', grams: '700' },
      { kind: 'weighed', name: 'Weigh what melted', grams: '692.5' },
    ]);
  });
});
