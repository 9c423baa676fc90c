import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { exact, sumOf } from '../quantity/index.ts';
import { planWeighings } from './plan-weighings.ts';
import type { WantedAddition } from './planned-weighing.ts';
import { findWorstErrorGrams, type Scale } from './scale.ts';

const bench: Scale = { id: 'bench', name: 'Bench scale', capacityGrams: 5000, readabilityGrams: 1 };
const middle: Scale = { id: 'middle', name: 'Middle scale', capacityGrams: 2000, readabilityGrams: '0.1' };
const fine: Scale = { id: 'fine', name: 'Small scale', capacityGrams: 200, readabilityGrams: '0.01' };
const scales = [bench, middle, fine];

const add = (grams: string | number, change: Partial<WantedAddition> = {}): WantedAddition => ({
  key: 'line',
  grams,
  relativeTolerance: '0.02',
  isLimited: false,
  ...change,
});
const plan = (additions: WantedAddition[], on: readonly Scale[] = scales) =>
  must(planWeighings({ additions, scales: on }, scaleTables));
const codesOf = (additions: WantedAddition[], on: readonly Scale[] = scales) =>
  plan(additions, on).rows.map(({ warnings }) => warnings.map(({ code }) => code));

describe('choice of the scale', () => {
  it.each([
    [3000, 'bench'],
    [1950.1, 'bench'],
    [1950, 'middle'],
    [150.001, 'middle'],
    [150, 'fine'],
    [0.5, 'fine'],
  ])('takes %f g to the scale that holds it in a vessel of 50 g with the least error: %s', (grams, id) => {
    expect(plan([add(grams)]).rows[0]?.scale?.id).toBe(id);
  });

  it('leaves a pocket scale to what no other weighs well enough', () => {
    const pocket: Scale = { ...fine, id: 'pocket', readabilityGrams: '0.001', capacityGrams: 50 };
    const on = [pocket, ...scales];
    expect(plan([add(19)], on).rows[0]?.scale?.id).toBe('fine');
    expect(plan([add('0.05')], on).rows[0]?.scale?.id).toBe('pocket');
  });

  it('takes a scale without room for a vessel where the others are too coarse', () => {
    expect(plan([add(199, { relativeTolerance: '0.001' })], [fine, bench]).rows[0]?.scale?.id).toBe('fine');
  });

  it('prefers a coarser step with a smaller permissible error', () => {
    const worn: Scale = {
      ...fine,
      id: 'worn',
      accuracyClass: 'III',
      verificationIntervalGrams: '1',
      capacityGrams: 2000,
    };
    expect(plan([add(100)], [worn, middle]).rows[0]?.scale?.id).toBe('middle');
  });

  it('counts a measured repeatability', () => {
    const shaky = { ...fine, id: 'shaky', repeatabilityGrams: '0.5' };
    expect(plan([add(100)], [shaky, middle]).rows[0]?.scale?.id).toBe('middle');
  });

  it('takes the first of two equal scales', () => {
    expect(plan([add(100)], [{ ...middle, id: 'twin' }, middle]).rows[0]?.scale?.id).toBe('twin');
  });

  it('leaves what no scale holds at its exact mass, with a warning, and plans the others', () => {
    const found = plan([add('5000.5'), add(100)]);
    expect(found.rows[0]).toMatchObject({ scale: null, worstCaseRelative: null, belowMinimumLoad: null });
    expect(found.rows[0]?.targetGrams.toFixed()).toBe('5000.5');
    expect(found.rows[0]?.warnings).toMatchObject([
      { code: 'no-scale-holds', where: 'line', found: '5000.5' },
    ]);
    expect(found.rows[1]?.warnings).toEqual([]);
    expect(codesOf([add(10)], [])).toEqual([['no-scale-holds']]);
  });
});

describe('target of a weighing', () => {
  it('is rounded to what the scale shows, half a step up', () => {
    expect(plan([add('312.449')], [middle]).rows[0]?.targetGrams.toFixed()).toBe('312.4');
    expect(plan([add('312.45')], [middle]).rows[0]?.targetGrams.toFixed()).toBe('312.5');
  });

  it('is rounded down for a limited substance, and its band never lies above what the formula asks', () => {
    const [row] = plan([add('12.999', { isLimited: true })], [fine]).rows;
    expect(row?.targetGrams.toFixed()).toBe('12.99');
    expect(row?.highGrams.toFixed()).toBe('12.999');
    expect(row?.lowGrams.toFixed()).toBe('12.73002');
  });

  it('lets the band reach up to what the limit allows where that is told', () => {
    const [row] = plan([add(10, { isLimited: true, mostGrams: '10.1' })], [fine]).rows;
    expect([row?.lowGrams.toFixed(), row?.highGrams.toFixed()]).toEqual(['9.8', '10.1']);
  });

  it('keeps the total, on the line that it hurts least', () => {
    const found = plan([add('1000.04'), add('300.04'), add('200.04')], [middle]);
    expect(found.rows.map(({ targetGrams }) => targetGrams.toFixed())).toEqual(['1000.1', '300', '200']);
    expect(found.roundingGrams.toFixed()).toBe('-0.02');
  });

  it('rounds up to no more than the scale holds', () => {
    const odd = { ...middle, capacityGrams: '200.05' };
    expect(plan([add('200.05')], [odd]).rows[0]?.targetGrams.toFixed()).toBe('200');
  });

  it('is left at the exact mass where the scale cannot show it, with a warning', () => {
    const [row] = plan([add('0.04')], [middle]).rows;
    expect(row?.targetGrams.toFixed()).toBe('0.04');
    expect(row?.warnings.map(({ code }) => code)).toEqual(['addition-not-shown', 'addition-too-small']);
  });
});

describe('warnings of a weighing', () => {
  it('tells an addition below the smallest weight of its scale, and not one at it', () => {
    // 2 x 0.41 x 0.1 / 0.02 = 4.1 g.
    expect(codesOf([add('4.1')], [middle])).toEqual([[]]);
    expect(codesOf([add('4.09')], [middle])).toEqual([['addition-too-small']]);
    expect(plan([add('4.09')], [middle]).rows[0]?.warnings[0]).toEqual({
      code: 'addition-too-small',
      where: 'line',
      found: '4.09',
      allowed: '4.1',
      parameters: { scale: 'Middle scale', tolerancePercent: '2' },
    });
  });

  it('tells an addition below the smallest load of the class', () => {
    const verified = {
      ...middle,
      capacityGrams: 1000,
      accuracyClass: 'III',
      verificationIntervalGrams: '0.1',
    } as const;
    expect(codesOf([add('1.9', { relativeTolerance: '0.1' })], [verified])).toEqual([['below-minimum-load']]);
    expect(codesOf([add('2', { relativeTolerance: '0.1' })], [verified])).toEqual([[]]);
  });
});

describe('bad input of a plan', () => {
  it.each([
    [add(0), scales, 'value-not-above', 'additions[0].grams'],
    [add(-1), scales, 'value-not-above', 'additions[0].grams'],
    [add(1, { relativeTolerance: 0 }), scales, 'tolerance-out-of-range', 'additions[0].relativeTolerance'],
    [add(1, { relativeTolerance: 1.1 }), scales, 'tolerance-out-of-range', 'additions[0].relativeTolerance'],
    [add(10, { mostGrams: 9 }), scales, 'addition-above-its-most', 'additions[0].grams'],
    [add(1), [{ ...fine, readabilityGrams: 0 }], 'value-not-above', 'scales[0].readabilityGrams'],
    [
      add(1),
      [{ ...bench, accuracyClass: 'III' as const, verificationIntervalGrams: '0.1' }],
      'load-outside-class',
      'Bench scale',
    ],
  ])('is refused: case %#', (addition, on, code, where) => {
    expect(planWeighings({ additions: [addition], scales: on }, scaleTables)).toMatchObject({
      ok: false,
      problems: [{ code, where }],
    });
  });

  it('has nothing to say about an empty sheet', () => {
    expect(plan([])).toMatchObject({ rows: [] });
  });
});

describe('properties of a plan', () => {
  const additions = fc.array(
    fc.record({
      key: fc.constant('line'),
      grams: fc.integer({ min: 1, max: 4_000_000 }).map((n) => (n / 1000).toFixed(3)),
      relativeTolerance: fc.constantFrom('0.01', '0.02', '0.05'),
      isLimited: fc.boolean(),
    }),
    { minLength: 1, maxLength: 8 },
  );

  it('never rounds a limited substance up, and shows every target on its scale', () => {
    fc.assert(
      fc.property(additions, (wanted) => {
        const { rows } = plan(wanted);
        for (const [
          index,
          { targetGrams, exactGrams, scale, warnings, lowGrams, highGrams },
        ] of rows.entries()) {
          if (wanted[index]?.isLimited)
            expect(targetGrams.lte(exactGrams) && highGrams.lte(exactGrams)).toBe(true);
          const isShown = targetGrams.mod(scale?.readabilityGrams ?? 1).isZero();
          expect(isShown || warnings.some(({ code }) => code === 'addition-not-shown')).toBe(true);
          expect(lowGrams.lte(targetGrams) && targetGrams.lte(highGrams)).toBe(true);
        }
      }),
    );
  });

  it('leaves no limited substance a greater share than the formula’s, unless it says that the total fell short', () => {
    fc.assert(
      fc.property(additions, (wanted) => {
        const { rows, roundingGrams } = plan(wanted);
        if (roundingGrams.lt(0)) return;
        const total = sumOf(rows.map(({ targetGrams }) => targetGrams));
        const exactTotal = sumOf(wanted.map(({ grams }) => grams));
        for (const [index, { targetGrams, exactGrams }] of rows.entries()) {
          if (!wanted[index]?.isLimited) continue;
          expect(targetGrams.times(exactTotal).lte(exactGrams.times(total))).toBe(true);
        }
      }),
    );
  });

  it('keeps the total within half a step of the line that took the difference, where no limit holds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 20_000, max: 1_900_000 }), { minLength: 1, maxLength: 8 }),
        (thousandths) => {
          const wanted = thousandths.map((n) => add((n / 1000).toFixed(3)));
          expect(plan(wanted, [middle]).roundingGrams.abs().lte('0.05')).toBe(true);
        },
      ),
    );
  });
});

describe('worst error of a scale in use', () => {
  it('is two half steps, and the error in service on top where the class is known', () => {
    expect(must(findWorstErrorGrams(middle, 80, scaleTables)).toFixed()).toBe('0.1');
    const verified = {
      ...middle,
      capacityGrams: 1000,
      accuracyClass: 'III',
      verificationIntervalGrams: '0.1',
    } as const;
    expect(must(findWorstErrorGrams(verified, 50, scaleTables)).toFixed()).toBe('0.2');
    expect(must(findWorstErrorGrams(verified, '50.1', scaleTables)).toFixed()).toBe('0.3');
  });

  it('does not read a class without its interval', () => {
    expect(
      must(findWorstErrorGrams({ ...middle, accuracyClass: 'III' }, exact(80), scaleTables)).toFixed(),
    ).toBe('0.1');
  });
});
