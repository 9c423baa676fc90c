import { describe, expect, it } from 'vitest';
import type { CertifiedLot } from '../../check/index.ts';
import { eitherOf } from './either-of.ts';

const lot = (lotNumber: string, details: Partial<CertifiedLot['details']>): CertifiedLot => ({
  lotId: lotNumber,
  lotNumber,
  materialId: 'oil',
  reference: `C ${lotNumber}`,
  details: { constituents: [], isComplete: true, peroxide: null, ifra: [], remark: '', ...details },
});
const linalool = (leastPercent: string, mostPercent: string) => ({
  name: 'Linalool',
  cas: '78-70-6',
  leastPercent,
  typicalPercent: leastPercent,
  mostPercent,
});

describe('whichever of two lots is taken', () => {
  it('spans both ranges, and starts at nought for what one of them does not list', () => {
    const { details } = eitherOf(
      lot('1', { constituents: [linalool('20', '30')] }),
      lot('2', {
        constituents: [linalool('25', '40'), { ...linalool('1', '2'), name: 'Camphor', cas: null }],
      }),
    );
    expect(
      details.constituents.map(({ name, leastPercent, mostPercent }) => [name, leastPercent, mostPercent]),
    ).toEqual([
      ['Linalool', '20', '40'],
      ['Camphor', '0', '2'],
    ]);
  });

  it('has the higher peroxide value, and none where one lot has none', () => {
    const of = (value: string) => ({ peroxide: { mmolPerLitre: value, measuredOn: null } });
    expect(eitherOf(lot('1', of('9')), lot('2', of('10'))).details.peroxide?.mmolPerLitre).toBe('10');
    expect(eitherOf(lot('1', of('9')), lot('2', {})).details.peroxide).toBeNull();
  });

  it('is allowed what both are, the lower of the two', () => {
    const of = (category: string, mostPercent: string) => ({ category, edition: '51', mostPercent });
    const { details } = eitherOf(
      lot('1', { ifra: [of('5A', '2'), of('4', '9')] }),
      lot('2', { ifra: [of('5A', '1.5')], isComplete: false }),
    );
    expect(details.ifra).toEqual([of('5A', '1.5')]);
    expect(details.isComplete).toBe(false);
  });
});
