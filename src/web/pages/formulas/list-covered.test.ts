import { describe, expect, it } from 'vitest';
import type { Formula } from './formula.ts';
import { listCovered, rowsFor } from './list-covered.ts';

const line = (itemKind: 'material' | 'formula', itemId: string, percent: string) => ({
  itemKind,
  itemId,
  percent,
});
const formula = (id: string, lines: object[]) => ({ id, latest: { lines } }) as unknown as Formula;
const ALL = [
  formula('base', [line('material', 'shea', '60'), line('material', 'oil', '40')]),
  formula('orange', [line('formula', 'base', '98.5'), line('material', 'orange-oil', '1.5')]),
  formula('plain', [line('formula', 'base', '99'), line('material', 'oil', '1')]),
];

describe('the materials of what a report covers', () => {
  it('are those of its mixtures, their base taken apart, from the least to the most of today', () => {
    // By hand: 60 % of 98.5 % is 59.1 %, of 99 % 59.4 %; 40 % of 98.5 % is 39.4 %, of 99 % 39.6 % and 1 % more.
    expect(listCovered(ALL, { baseFormulaId: 'base', formulaIds: ['orange', 'plain'] })).toEqual([
      { materialId: 'shea', leastPercent: '59.1', mostPercent: '59.4' },
      { materialId: 'oil', leastPercent: '39.4', mostPercent: '40.6' },
      { materialId: 'orange-oil', leastPercent: '0', mostPercent: '1.5' },
    ]);
  });

  it('are those of the base where no mixture is named, and none where nothing is', () => {
    expect(listCovered(ALL, { baseFormulaId: 'base', formulaIds: [] })).toHaveLength(2);
    expect(listCovered(ALL, { baseFormulaId: null, formulaIds: [] })).toEqual([]);
  });
});

describe('the rows of a report', () => {
  const covered = listCovered(ALL, { baseFormulaId: 'base', formulaIds: [] });
  const row = (materialId: string, mostPercent = '') => ({ materialId, leastPercent: '', mostPercent });

  it('stand there for each material, with nothing typed for anybody', () => {
    expect(rowsFor([], covered)).toEqual([row('shea'), row('oil')]);
  });

  it('keep what was typed, and go where nothing was and the material is covered no more', () => {
    expect(rowsFor([row('oil', '45'), row('wax', '2'), row('musk')], covered)).toEqual([
      row('oil', '45'),
      row('wax', '2'),
      row('shea'),
    ]);
  });
});
