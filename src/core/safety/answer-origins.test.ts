import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOrigins, type MaterialOrigins, ORIGIN_FLAGS } from './answer-origins.ts';

const shea: MaterialOrigins = { name: 'Shea butter', origins: ['tree-nut'], namedOrigins: [] };
const wax: MaterialOrigins = { name: 'Beeswax', origins: ['bee', 'animal'], namedOrigins: ['bee', 'animal'] };
const oil: MaterialOrigins = { name: 'Sunflower oil', origins: [], namedOrigins: [] };
const unsaid: MaterialOrigins = { name: 'Old scent', origins: null, namedOrigins: [] };
const answer = (materials: MaterialOrigins[], flag: string) =>
  answerOrigins(materials).find((row) => row.flag === flag);

describe('has it got nuts in?', () => {
  it('names what comes from it, and says of the rest that it does not', () => {
    const of = [shea, wax, oil];
    expect(answer(of, 'tree-nut')).toEqual({
      flag: 'tree-nut',
      verdict: 'contains',
      materials: ['Shea butter'],
      byName: [],
    });
    expect(answer(of, 'bee')?.materials).toEqual(['Beeswax']);
    expect(answer(of, 'peanut')).toEqual({ flag: 'peanut', verdict: 'free', materials: [], byName: [] });
  });

  it('does not know while nobody has said it of one material, and names that one', () => {
    expect(answer([oil, unsaid], 'peanut')).toEqual({
      flag: 'peanut',
      verdict: 'unknown',
      materials: ['Old scent'],
      byName: [],
    });
  });

  it('contains it whatever else is not known', () => {
    expect(answer([shea, unsaid], 'tree-nut')?.verdict).toBe('contains');
  });

  it('counts what a name tells of, whether nobody has said or the entry does not', () => {
    const sunflower: MaterialOrigins = { name: 'Sunflower oil', origins: [], namedOrigins: ['daisy-family'] };
    const byName = {
      flag: 'daisy-family',
      verdict: 'contains',
      materials: ['Sunflower oil'],
      byName: ['Sunflower oil'],
    };
    expect(answer([shea, sunflower], 'daisy-family')).toEqual(byName);
    expect(answer([shea, { ...sunflower, origins: null }], 'daisy-family')).toEqual(byName);
    const ticked: MaterialOrigins = { ...sunflower, origins: ['daisy-family'] };
    expect(answer([shea, ticked], 'daisy-family')).toEqual({ ...byName, byName: [] });
  });

  it('is never free of what one of the names tells of', () => {
    const material = fc.record({
      name: fc.constantFrom('a', 'b', 'c'),
      origins: fc.option(fc.subarray([...ORIGIN_FLAGS])),
      namedOrigins: fc.subarray([...ORIGIN_FLAGS]),
    });
    fc.assert(
      fc.property(fc.array(material, { minLength: 1 }), (materials) => {
        const named = new Set(materials.flatMap(({ namedOrigins }) => namedOrigins));
        for (const { flag, verdict } of answerOrigins(materials))
          if (named.has(flag)) expect(verdict).toBe('contains');
      }),
    );
  });

  it('does not know of nothing', () => {
    expect(answerOrigins([]).every((row) => row.verdict === 'unknown')).toBe(true);
  });

  it('names a material once, however often it goes in', () => {
    expect(answer([shea, shea], 'tree-nut')?.materials).toEqual(['Shea butter']);
  });

  it('never turns from "contains" or "unknown" to "free" when something is added', () => {
    const material = fc.record({
      name: fc.constantFrom('a', 'b', 'c'),
      origins: fc.option(fc.subarray([...ORIGIN_FLAGS])),
      namedOrigins: fc.subarray([...ORIGIN_FLAGS]),
    });
    fc.assert(
      fc.property(fc.array(material, { minLength: 1 }), material, (some, more) => {
        const after = answerOrigins([...some, more]);
        for (const [index, before] of answerOrigins(some).entries())
          if (before.verdict !== 'free') expect(after[index]?.verdict).not.toBe('free');
      }),
    );
  });
});
