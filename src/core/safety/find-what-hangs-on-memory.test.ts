import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { checkComposition } from './check-composition.ts';
import type { RangedContribution } from './composition-check.ts';
import { findWhatHangsOnMemory } from './find-what-hangs-on-memory.ts';

const part = (
  name: string,
  leastPercent: number,
  mostPercent: number,
  confidence = 'memory',
): RangedContribution => ({
  name,
  leastPercent,
  mostPercent,
  confidence,
  fromMaterials: ['An oil'],
  origin: 'natural',
});

function ask(...contributions: RangedContribution[]) {
  const { markets } = checkComposition(boundSafetyTables(), {
    markets: ['EU'],
    use: 'leave-on',
    category: '5A',
    bodyPart: 'body',
    productType: 'body-lotion',
    firstSupplied: '2026-11-25',
    contributions,
  });
  const { firm, hangs } = findWhatHangsOnMemory(markets, contributions);
  const tell = (things: typeof firm) => things.map(({ about, kind, substance }) => [about, kind, substance]);
  return { firm: tell(firm), hangs: tell(hangs) };
}

// Methyl eugenol: 0.0002 % of other leave-on products (Regulation (EC) No 1223/2009, Annex III, entry 102), read.
const LAW = ['limit', 'law', 'Methyl Eugenol'];
// Geraniol: named over 0.001 % of a leave-on product (Annex III after Regulation (EU) 2023/1545).
const NAME = ['name', undefined, 'Geraniol'];

describe('what of a check hangs on a remembered figure', () => {
  it('is a remembered amount above half of a limit; at half of it the answer is firm', () => {
    expect(ask(part('Methyl Eugenol', 0, 0.00010001)).hangs).toContainEqual(LAW);
    expect(ask(part('Methyl Eugenol', 0, 0.0001)).firm).toContainEqual(LAW);
  });

  it('is a limit that the remembered most breaks', () => {
    expect(ask(part('Methyl Eugenol', 0, 0.0003)).hangs).toContainEqual(LAW);
  });

  it('is nothing that a paper measures, near its limit or over it', () => {
    expect(ask(part('Methyl Eugenol', 0, 0.0002, 'supplier'))).toEqual({
      firm: expect.arrayContaining([LAW]),
      hangs: [],
    });
    const over = ask(part('Methyl Eugenol', 0, 0.0003, 'supplier'));
    expect(over.hangs).toEqual([]);
    expect(over.firm).not.toContainEqual(LAW);
  });

  it('is a name whose remembered range crosses the threshold, and not one that passes it at its least', () => {
    expect(ask(part('Geraniol', 0.001, 0.005)).hangs).toContainEqual(NAME);
    expect(ask(part('Geraniol', 0.0010001, 0.005)).firm).toContainEqual(NAME);
  });

  it('is a name that is left out near its threshold, above half of it and not at half', () => {
    expect(ask(part('Geraniol', 0, 0.00050001)).hangs).toContainEqual(NAME);
    expect(ask(part('Geraniol', 0, 0.0005)).firm).toContainEqual(NAME);
  });

  it('leaves out what has no rule and what is not there', () => {
    expect(ask(part('Cera Alba', 5, 5), part('Geraniol', 0, 0))).toEqual({ firm: [], hangs: [] });
  });
});
