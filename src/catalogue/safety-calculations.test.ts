import { describe, expect, it } from 'vitest';
import { allergens } from './allergens.ts';
import { limits } from './limits.ts';
import { safetyCalculations } from './safety-calculations.ts';

describe.each(safetyCalculations)('the calculation $name', (calculation) => {
  it('answers its example number for number, in the shape of its output', () => {
    const answer = calculation.run(calculation.example.input);
    expect(answer).toEqual({ ok: true, value: calculation.example.output });
    expect(calculation.output.safeParse(calculation.example.output).success).toBe(true);
  });
});

const butter = { market: 'EU', use: 'leave-on', category: '5A', date: '2026-11-25' };
const problemOf = (contribution: object) => {
  const answer = limits.run({ ...butter, contributions: [contribution] });
  return answer.ok ? [] : answer.problems.map(({ code, where }) => [code, where]);
};

describe('bad input', () => {
  it('refuses a CAS number whose check digit is wrong', () => {
    expect(problemOf({ name: 'Linalool', cas: '78-70-5', percent: 1 })).toEqual([
      ['cas-check-digit-wrong', 'contributions[0].cas'],
    ]);
  });

  it('refuses a percentage above the whole product and an unknown field', () => {
    expect(problemOf({ name: 'Linalool', percent: 100.1 })).toEqual([
      ['value-too-large', 'contributions[0].percent'],
    ]);
    expect(problemOf({ name: 'Linalool', percent: 1, share: 2 })).toEqual([
      ['field-unknown', 'contributions[0].share'],
    ]);
  });

  it('refuses a last day before the first', () => {
    const answer = allergens.run({
      market: 'EU',
      use: 'leave-on',
      firstSupplied: '2026-11-25',
      lastSupplied: '2026-11-24',
      contributions: [],
    });
    expect(answer).toMatchObject({
      ok: false,
      problems: [{ code: 'last-supplied-before-first', where: 'lastSupplied' }],
    });
  });

  it('answers every verdict in the shape of its output', () => {
    const contributions = [
      { name: 'Limonene', percent: 1 },
      { name: 'Tea tree oil', percent: 1 },
      { name: 'from the supplier', cas: '8007-75-8', percent: 1 },
      { name: 'Salicylic Acid', percent: 3 },
      { name: 'Sodium Hydroxide', percent: 1 },
      { name: 'Cera Alba', percent: 3 },
    ];
    for (const market of ['EU', 'NI', 'GB', 'US']) {
      const answer = limits.run({ ...butter, market, contributions });
      expect(limits.output.safeParse(answer.ok ? answer.value : undefined).success).toBe(true);
      const named = allergens.run({ market, use: 'rinse-off', firstSupplied: '2026-11-25', contributions });
      expect(allergens.output.safeParse(named.ok ? named.value : undefined).success).toBe(true);
    }
  });
});
