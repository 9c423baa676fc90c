import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { expandFormula } from './expand-formula.ts';
import { type RollUpMaterial, rollUpContributions } from './roll-up-contributions.ts';

const shea: RollUpMaterial = { id: 'shea', name: 'Butyrospermum Parkii Butter', constituents: [] };
const orange: RollUpMaterial = {
  id: 'orange',
  name: 'Citrus Aurantium Dulcis Peel Oil',
  cas: '8008-57-9',
  plantPart: 'peel',
  process: 'expressed',
  constituents: [
    {
      name: 'Limonene',
      cas: '5989-27-5',
      leastPercent: '93',
      typicalPercent: '95',
      mostPercent: '97',
      confidence: 'supplier',
    },
    {
      name: 'Linalool',
      cas: '78-70-6',
      leastPercent: 0,
      typicalPercent: 0.3,
      mostPercent: 0.7,
      confidence: 'read',
    },
  ],
};
const lavender: RollUpMaterial = {
  id: 'lavender',
  name: 'Lavandula Angustifolia Oil',
  constituents: [
    {
      name: 'linalool',
      cas: '78-70-6',
      leastPercent: 20,
      typicalPercent: 32,
      mostPercent: 45,
      confidence: 'memory',
    },
  ],
};

const rollUp = (grams: Record<string, string>, ...materials: RollUpMaterial[]) => {
  const lines = Object.entries(grams).map(([id, each]) => ({
    key: id,
    stage: 'a',
    item: { kind: 'material', id } as const,
    grams: each,
  }));
  const recipe = { formulaId: 'f', name: 'F', lines };
  const expanded = must(expandFormula('r', { revision: () => recipe, base: () => undefined }));
  return rollUpContributions(expanded, new Map(materials.map((material) => [material.id, material])));
};
const shown = (result: ReturnType<typeof rollUp>) =>
  must(result).map(({ name, leastPercent, typicalPercent, mostPercent }) => [
    name,
    leastPercent.toExact().toFixed(),
    typicalPercent.toExact().toFixed(),
    mostPercent.toExact().toFixed(),
  ]);

describe('rolling a formula up into what it contains', () => {
  it('counts each material itself and each constituent of it', () => {
    expect(shown(rollUp({ shea: '98', orange: '2' }, shea, orange))).toEqual([
      ['Butyrospermum Parkii Butter', '98', '98', '98'],
      ['Citrus Aurantium Dulcis Peel Oil', '2', '2', '2'],
      ['Limonene', '1.86', '1.9', '1.94'],
      ['Linalool', '0', '0.006', '0.014'],
    ]);
  });

  it('keeps what tells a material apart, and which are brought in by nature', () => {
    const contributions = must(rollUp({ shea: '98', orange: '2' }, shea, orange));
    expect(contributions[1]).toMatchObject({
      cas: '8008-57-9',
      plantPart: 'peel',
      process: 'expressed',
      origin: 'added',
      confidence: 'computed',
    });
    expect(contributions[2]).toMatchObject({ cas: '5989-27-5', origin: 'natural', confidence: 'supplier' });
  });

  it('adds a substance up over its sources, with the weakest confidence and every source named', () => {
    const linalool = must(rollUp({ shea: '97', orange: '2', lavender: '1' }, shea, orange, lavender)).find(
      ({ name }) => name === 'Linalool',
    );
    expect(linalool?.mostPercent.toExact().toFixed()).toBe('0.464');
    expect(linalool?.confidence).toBe('memory');
    expect(linalool?.fromMaterials).toEqual([orange.name, lavender.name]);
  });

  it('is exact on a limit that decimals of the shares would miss', () => {
    const third: RollUpMaterial = {
      id: 'oil',
      name: 'Oil',
      constituents: [{ name: 'X', leastPercent: 3, typicalPercent: 3, mostPercent: 3, confidence: 'read' }],
    };
    const x = must(rollUp({ shea: '2', oil: '1' }, shea, third)).find(({ name }) => name === 'X');
    expect(x?.mostPercent.toExact().eq(1)).toBe(true);
  });

  it('keeps the number that only a substance that lists itself gives', () => {
    const one = { leastPercent: 100, typicalPercent: 100, mostPercent: 100, confidence: 'supplier' } as const;
    const pure: RollUpMaterial = {
      id: 'me',
      name: 'ME-1',
      constituents: [{ name: 'me-1', cas: '93-15-2', ...one }],
    };
    const [found, ...others] = must(rollUp({ me: '5', shea: '95' }, pure, shea)).filter(
      ({ name }) => name === 'ME-1',
    );
    expect(found).toMatchObject({ cas: '93-15-2', alsoCas: ['93-15-2'] });
    expect(others).toEqual([]);
  });

  it('does not count a pure substance twice that lists itself', () => {
    const pure: RollUpMaterial = {
      id: 'menthol',
      name: 'Menthol',
      constituents: [
        { name: 'menthol', leastPercent: 99, typicalPercent: 99.5, mostPercent: 100, confidence: 'read' },
      ],
    };
    expect(shown(rollUp({ shea: '99', menthol: '1' }, shea, pure))).toHaveLength(2);
  });

  it('keeps what was mixed into a scent blend apart from what nature brings in', () => {
    const blend: RollUpMaterial = {
      id: 'blend',
      name: 'Scent blend',
      constituentOrigin: 'added',
      constituents: [
        {
          name: 'Linalool',
          cas: '78-70-6',
          leastPercent: 1,
          typicalPercent: 1,
          mostPercent: 1,
          confidence: 'supplier',
        },
      ],
    };
    const rows = must(rollUp({ lavender: '1', blend: '1' }, lavender, blend)).filter(
      ({ name }) => name.toLowerCase() === 'linalool',
    );
    expect(rows.map(({ origin }) => origin)).toEqual(['natural', 'added']);
  });

  it('reads a percentage however it was written', () => {
    const odd: RollUpMaterial = {
      id: 'odd',
      name: 'Odd',
      constituents: [
        { name: 'X', leastPercent: '.5', typicalPercent: '5.', mostPercent: ' 10.0 ', confidence: 'read' },
      ],
    };
    expect(shown(rollUp({ odd: '1' }, odd))[1]).toEqual(['X', '0.5', '5', '10']);
    const trace = {
      name: 'X',
      leastPercent: 1e-7,
      typicalPercent: 1e-7,
      mostPercent: 1e-7,
      confidence: 'read' as const,
    };
    expect(shown(rollUp({ odd: '1' }, { ...odd, constituents: [trace] }))[1]?.[1]).toBe('0.0000001');
  });

  it('does not change when a line is split between two bases or two stages', () => {
    const percent = fc.integer({ min: 1, max: 499_999 });
    fc.assert(
      fc.property(percent, percent, percent, (fat, oil, cut) => {
        const part = Math.min(cut, oil - 1);
        const total = { shea: String(fat), lavender: String(oil) };
        const once = shown(rollUp(total, shea, lavender));
        const lines = [
          ['shea', fat],
          ['lavender', part],
          ['lavender', oil - part],
        ]
          .filter(([, grams]) => Number(grams) > 0)
          .map(([id, grams], index) => ({
            key: String(index),
            stage: String(index),
            item: { kind: 'material', id: String(id) } as const,
            grams: String(grams),
          }));
        const recipe = { formulaId: 'f', name: 'F', lines };
        const expanded = must(expandFormula('r', { revision: () => recipe, base: () => undefined }));
        const split = rollUpContributions(
          expanded,
          new Map([
            ['shea', shea],
            ['lavender', lavender],
          ]),
        );
        expect(shown(split)).toEqual(once);
      }),
    );
  });

  it('never lets constituents that come to 100 % of an oil exceed the oil', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10_000 }),
        fc.integer({ min: 1, max: 99_999 }),
        (share, grams) => {
          const half = exact(share).div(100).toFixed();
          const rest = exact(100).minus(half).toFixed();
          const part = (name: string, value: string) =>
            ({
              name,
              leastPercent: value,
              typicalPercent: value,
              mostPercent: value,
              confidence: 'read',
            }) as const;
          const oil: RollUpMaterial = {
            id: 'oil',
            name: 'Oil',
            constituents: [part('A', half), part('B', rest)],
          };
          const [, own, a, b] = must(rollUp({ shea: '777', oil: String(grams) }, shea, oil));
          const apart = exact(a?.mostPercent.toExact() ?? 0)
            .plus(b?.mostPercent.toExact() ?? 0)
            .minus(own?.mostPercent.toExact() ?? 0);
          expect(apart.abs().lte('1e-15')).toBe(true);
        },
      ),
    );
  });

  it('names the material and the constituent whose range cannot stand', () => {
    const bad = (
      least: number | string,
      typical: number | string,
      most: number | string,
    ): RollUpMaterial => ({
      ...orange,
      constituents: [
        { name: 'X', leastPercent: least, typicalPercent: typical, mostPercent: most, confidence: 'read' },
      ],
    });
    const codeOf = (material: RollUpMaterial) => {
      const result = rollUp({ orange: '1' }, material);
      return result.ok ? undefined : result.problems[0];
    };
    expect(codeOf(bad(5, 4, 6))).toMatchObject({
      code: 'constituent-range-disordered',
      where: orange.name,
      parameters: { constituent: 'X' },
    });
    for (const value of [101, -1, 'much', Number.NaN, '0.000000001']) {
      expect(codeOf(bad(0, 0, value))).toMatchObject({ code: 'constituent-not-a-percent' });
    }
    expect(rollUp({ gone: '1' }, shea)).toMatchObject({
      problems: [{ code: 'thing-not-found', found: 'gone' }],
    });
  });
});
