import { expect, it } from 'vitest';
import { expectSoundTable, isCasNumber } from '../../../test/tables/expect-sound-table.ts';
import { ifraCategories, ifraLimits, ifraRules, ifraSources } from './limits-49.ts';

it('has 75 rows over 18 categories', () => {
  expect(ifraLimits).toHaveLength(75);
  expect(ifraCategories).toHaveLength(18);
  for (const table of [ifraLimits, ifraCategories, ifraRules]) expectSoundTable(table, ifraSources);
  expect(ifraLimits.flatMap(({ cas }) => cas).filter((cas) => !isCasNumber(cas))).toEqual([]);
});

it('says something of every category in every row, and limits lie between 0 and 100 per cent', () => {
  const words = ['no-restriction', 'prohibited', 'unknown'];
  for (const row of ifraLimits) {
    expect(Object.keys(row.limits).sort()).toEqual(ifraCategories.map(({ id }) => id).sort());
    for (const limit of Object.values(row.limits)) {
      if (typeof limit === 'number') expect(limit > 0 && limit <= 100).toBe(true);
      else expect(words).toContain(limit);
    }
  }
});

it('claims an edition only where it gives values, and gives no value from memory', () => {
  for (const row of ifraLimits) {
    const hasValue = Object.values(row.limits).some((limit) => typeof limit === 'number');
    expect(row.edition === '49').toBe(hasValue);
    if (hasValue) expect(row.confidence).not.toBe('memory');
  }
});

it('scales with the NESIL of geraniol, 11000 ug/cm2, as the method of the 49th Amendment has it', () => {
  const geraniol = ifraLimits.find(({ id }) => id === 'geraniol');
  const shares = { 1: 7.7e-5, 2: 2.3e-5, 4: 4.3e-4, '5A': 1.1e-4, 9: 8.4e-4 } as const;
  for (const [category, share] of Object.entries(shares)) {
    const limit = geraniol?.limits[category as keyof typeof shares];
    expect(limit).toBeTypeOf('number');
    // The factors are printed with two figures: within 4 per cent.
    expect(Math.abs(Number(limit) / 11_000 / share - 1)).toBeLessThan(0.04);
  }
});

it('has eight phototoxic oils, all free in rinse-off products', () => {
  const phototoxic = ifraLimits.filter((row) => row.sumGroup === 'phototoxic');
  expect(phototoxic).toHaveLength(8);
  expect(phototoxic.every((row) => row.rinseOffFree === true)).toBe(true);
});
