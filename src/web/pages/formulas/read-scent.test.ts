import { describe, expect, it } from 'vitest';
import { sayHere } from '../../parts/say-here.ts';
import { readScent } from './read-scent.ts';
import type { OilDraft, ScentDraft } from './scent-draft.ts';

const oil = (part: Partial<OilDraft>): OilDraft => ({
  isScent: true,
  part: '1',
  least: '',
  most: '',
  ...part,
});
const draft = (part: Partial<ScentDraft>): ScentDraft => ({
  oils: [oil({ isScent: false, part: '985' }), oil({ part: '9' }), oil({ part: '6' })],
  isFree: false,
  mostPercent: '',
  batchGrams: '',
  scaleId: '',
  ...part,
});
const told = (part: Partial<ScentDraft>) => {
  const read = readScent(draft(part));
  return read.ok ? [] : read.problems.map(({ code, where }) => [code, where]);
};

describe('what is typed on the scent page', () => {
  it('is parts of the lines that are scent, and what else is given', () => {
    expect(readScent(draft({ mostPercent: '1.5', batchGrams: '2 000' }))).toMatchObject({
      value: {
        oils: [
          { line: 1, share: '9' },
          { line: 2, share: '6' },
        ],
        mostPercent: '1.5',
        batchGrams: '2000',
      },
    });
  });

  it('is free from nothing to all where no range is typed, and within the range where one is', () => {
    const oils = [oil({ least: '20', most: '62.5' }), oil({})];
    expect(readScent(draft({ isFree: true, oils }))).toMatchObject({
      value: {
        oils: [
          { line: 0, share: ['0.2', '0.625'] },
          { line: 1, share: ['0', '1'] },
        ],
      },
    });
  });

  it.each(['abc', '1,5', '.', '1.5%', '1e3', ''])('is never taken as nothing: %j as a part', (part) => {
    expect(told({ oils: [oil({ part: '9' }), oil({ part })] }).map(([, where]) => where)).toEqual([
      'oils[1].part',
    ]);
  });

  it.each(['abc', '1,5', '.', '1.5%', '1e3', '-1', '0'])(
    'is told at the field: %j as the most or a batch',
    (typed) => {
      const found = told({ mostPercent: typed, batchGrams: typed });
      expect(found.map(([, where]) => where)).toEqual(['mostPercent', 'batchGrams']);
    },
  );

  it.each(['abc', '5,5', '.', '-5', '101'])('is told at the field: %j in a range', (typed) => {
    expect(told({ isFree: true, oils: [oil({ least: typed }), oil({})] }).map(([, where]) => where)).toEqual([
      'oils[0].least',
    ]);
  });

  it('may not go over a hundred at the most, nor under nought as a part', () => {
    expect(told({ mostPercent: '100' })).toEqual([]);
    expect(told({ mostPercent: '100.0001' })).toEqual([['percent-out-of-range', 'mostPercent']]);
    expect(told({ oils: [oil({ part: '0' }), oil({ part: '1' })] })).toEqual([]);
    expect(told({ oils: [oil({ part: '-0.1' }), oil({ part: '1' })] })).toEqual([
      ['share-negative', 'oils[0].part'],
    ]);
    expect(told({ oils: [oil({ part: '0' })] })).toEqual([['shares-all-nought', 'oils']]);
  });

  it('says ranges in the percents that were typed, under the name of the oil', () => {
    const crossed = readScent(draft({ isFree: true, oils: [oil({ least: '50', most: '20' }), oil({})] }));
    const [found] = crossed.ok ? [] : crossed.problems;
    expect(found && sayHere(found, 'Sweet orange oil, at the least').says).toBe(
      'Sweet orange oil, at the least is 50 %, above the most, which is 20 %.',
    );
    const over = readScent(draft({ isFree: true, oils: [oil({ least: '60' }), oil({ least: '50' })] }));
    const [sum] = over.ok ? [] : over.problems;
    expect(sum && sayHere(sum).says).toBe('The least of the oils together is 110 % of the scent.');
    expect(told({ isFree: true, oils: [oil({ most: '60' }), oil({ most: '39.9' })] })).toEqual([
      ['ranges-too-little', 'oils'],
    ]);
    expect(told({ isFree: true, oils: [oil({ most: '60' }), oil({ most: '40' })] })).toEqual([]);
  });
});
