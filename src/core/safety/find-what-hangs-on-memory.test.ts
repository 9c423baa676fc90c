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
  const { firm, hangs, over } = findWhatHangsOnMemory(markets);
  const tell = (things: typeof firm) => things.map(({ about, kind, substance }) => [about, kind, substance]);
  return { firm: tell(firm), hangs: tell(hangs), over: tell(over) };
}

// Methyl eugenol: 0.0002 % of other leave-on products (Regulation (EC) No 1223/2009, Annex III, entry 102), read.
const LAW = ['limit', 'law', 'Methyl Eugenol'];
// Geraniol: named over 0.001 % of a leave-on product (Annex III after Regulation (EU) 2023/1545).
const NAME = ['name', undefined, 'Geraniol'];

describe('what of a check hangs on a remembered figure', () => {
  it('is a remembered amount that, half as much again, would be over its limit; at two thirds of it the answer is firm', () => {
    // 1.5 x 0.00013333 is below 0.0002, 1.5 x 0.00013334 is above.
    expect(ask(part('Methyl Eugenol', 0, 0.00013334)).hangs).toContainEqual(LAW);
    expect(ask(part('Methyl Eugenol', 0, 0.00013333)).firm).toContainEqual(LAW);
  });

  it('is a limit that the remembered most breaks and half of it would not; what stays over is no question of memory', () => {
    expect(ask(part('Methyl Eugenol', 0, 0.0003)).hangs).toContainEqual(LAW);
    expect(ask(part('Methyl Eugenol', 0, 0.0004)).hangs).toContainEqual(LAW);
    const over = ask(part('Methyl Eugenol', 0, 0.00040001));
    expect([...over.hangs, ...over.firm]).not.toContainEqual(LAW);
    expect(over.over).toContainEqual(LAW);
  });

  it('is nothing that a paper measures, near its limit or over it', () => {
    expect(ask(part('Methyl Eugenol', 0, 0.0002, 'supplier'))).toEqual({
      firm: expect.arrayContaining([LAW]),
      hangs: [],
      over: [],
    });
    const over = ask(part('Methyl Eugenol', 0, 0.0003, 'supplier'));
    expect([...over.hangs, ...over.over]).toEqual([]);
    expect(over.firm).not.toContainEqual(LAW);
  });

  it('is a name that half of the remembered figure would leave out, and not one that half of it still asks for', () => {
    // Half of 0.00718 % is 0.00359 %, over 0.001 % all the same.
    expect(ask(part('Geraniol', 0, 0.00718)).firm).toContainEqual(NAME);
    expect(ask(part('Geraniol', 0, 0.0020001)).firm).toContainEqual(NAME);
    expect(ask(part('Geraniol', 0, 0.002)).hangs).toContainEqual(NAME);
  });

  it('is a name that is left out and half as much again would ask for', () => {
    expect(ask(part('Geraniol', 0, 0.00066667)).hangs).toContainEqual(NAME);
    expect(ask(part('Geraniol', 0, 0.00066666)).firm).toContainEqual(NAME);
  });

  it('leaves out what has no rule and what is not there', () => {
    expect(ask(part('Cera Alba', 5, 5), part('Geraniol', 0, 0))).toEqual({ firm: [], hangs: [], over: [] });
  });
});
