import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact, sumOf } from '../quantity/index.ts';
import { splitIntoLoads } from './bowl-loads.ts';

const wish = {
  massGrams: '1000',
  whippedGramsPerMl: '0.5',
  bowlMl: '2000',
  bowlGrams: null,
  stepGrams: '0.1',
} as const;
const gramsOf = (found: ReturnType<typeof splitIntoLoads>) => must(found).loads.map((load) => load.toFixed());

describe('bowl loads', () => {
  it('are one where the whipped volume just fills the bowl, two where it is a step more', () => {
    expect(gramsOf(splitIntoLoads(wish))).toEqual(['1000']);
    expect(gramsOf(splitIntoLoads({ ...wish, massGrams: '1000.1' }))).toEqual(['500.1', '500']);
    expect(must(splitIntoLoads({ ...wish, massGrams: '1000.1' }))).toMatchObject({ boundBy: 'volume' });
    expect(must(splitIntoLoads(wish)).whippedMl.toFixed()).toBe('2000');
  });

  it('are as equal as the scale can weigh them', () => {
    expect(gramsOf(splitIntoLoads({ ...wish, massGrams: '2500', stepGrams: '1' }))).toEqual([
      '834',
      '833',
      '833',
    ]);
    expect(gramsOf(splitIntoLoads({ ...wish, massGrams: '2500.4', stepGrams: '1' }))).toEqual([
      '834',
      '833',
      '833.4',
    ]);
  });

  it('keep within what the bowl carries too', () => {
    const found = must(splitIntoLoads({ ...wish, bowlGrams: '400' }));
    expect(found.loads).toHaveLength(3);
    expect(found.boundBy).toBe('mass');
    expect(gramsOf(splitIntoLoads({ ...wish, bowlMl: null }))).toEqual(['1000']);
  });

  it('add up to the mass, and none overflows, whatever is asked', () => {
    const grams = fc.integer({ min: 1, max: 3_000_000 }).map((tenths) => exact(tenths).div(1000));
    const density = fc.integer({ min: 200, max: 1000 }).map((thousandths) => exact(thousandths).div(1000));
    fc.assert(
      fc.property(
        grams,
        density,
        fc.integer({ min: 300, max: 5000 }),
        (massGrams, whippedGramsPerMl, bowlMl) => {
          const found = splitIntoLoads({ ...wish, massGrams, whippedGramsPerMl, bowlMl });
          if (!found.ok) return;
          const { loads } = found.value;
          expect(sumOf(loads).eq(massGrams)).toBe(true);
          for (const load of loads) {
            expect(load.lte(exact(bowlMl).times(whippedGramsPerMl))).toBe(true);
            expect(loads[0]?.minus(load).abs().lt('0.2')).toBe(true);
          }
        },
      ),
    );
  });

  it('refuses what no bowl holds, and nothing to whip', () => {
    const many = splitIntoLoads({ ...wish, massGrams: '100000', bowlMl: '100' });
    expect(!many.ok && many.problems[0]?.code).toBe('loads-too-many');
    const none = splitIntoLoads({ ...wish, massGrams: '0', bowlMl: '0' });
    expect(!none.ok && none.problems.map((each) => each.where)).toEqual(['massGrams', 'bowlMl']);
  });
});
