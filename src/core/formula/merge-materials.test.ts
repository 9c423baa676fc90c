import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { toText } from '../quantity/index.ts';
import { expandFormula } from './expand-formula.ts';
import { mergeMaterials } from './merge-materials.ts';

const expanded = must(
  expandFormula('r', {
    revision: () => ({
      formulaId: 'r',
      name: 'Recipe',
      lines: [
        { key: '0', stage: '', item: { kind: 'material', id: 'fat' }, grams: '90' },
        { key: '1', stage: '', item: { kind: 'material', id: 'lot-1' }, grams: '4' },
        { key: '2', stage: '', item: { kind: 'material', id: 'lot-2' }, grams: '6' },
      ],
    }),
    base: () => undefined,
  }),
);
const sharesOf = (formula: typeof expanded) =>
  formula.materials.map(({ materialId, percent }) => [materialId, toText(percent)]);

describe('lots that come together as their material', () => {
  it('add up', () => {
    const merged = mergeMaterials(expanded, (id) => (id.startsWith('lot') ? 'oil' : id));
    expect(sharesOf(merged)).toEqual([
      ['fat', '90'],
      ['oil', '10'],
    ]);
  });

  it('change nothing where each is its own', () => {
    expect(sharesOf(mergeMaterials(expanded, (id) => id))).toEqual(sharesOf(expanded));
  });
});
