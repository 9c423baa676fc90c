import { describe, expect, it } from 'vitest';
import { must } from '../../core/problem.ts';
import { loadFaces } from '../paint/index.ts';
import { layoutPaper } from './layout-paper.ts';
import { buildPackingSlip } from './packing-slip.ts';
import type { Paper } from './paper.ts';
import { buildPickList } from './pick-list.ts';
import { buildWeighingSheet, type WeighingSheet } from './weighing-sheet.ts';

const createdAt = '2026-11-25T09:00:00Z';
const workshopName = 'Larkfold Butters';

const sheet: WeighingSheet = {
  workshopName,
  batchNumber: 'CO-0418',
  productName: 'Cedar and orange body butter',
  revision: '4',
  purpose: 'sale',
  batchGrams: '1 180',
  rows: [
    { stage: 'Melt', materialName: 'Shea butter', lot: 'SB-07', targetGrams: '640', scaleName: 'Big, 1 g' },
    {
      stage: 'Scent',
      materialName: 'Cedar oil',
      lot: '19C',
      targetGrams: '1.12',
      scaleName: 'Small, 0.01 g',
      tolerancePercent: '2.7',
      warning: 'Below the smallest weight of this scale: weigh a premix.',
    },
    { stage: 'Melt', materialName: 'Cocoa butter', lot: 'CB-11', targetGrams: '180', scaleName: 'Big, 1 g' },
  ],
  cautions: ['Cap back on at once.'],
  createdAt,
};

/** The words on a paper, as they come off its pages. */
const wordsOf = (paper: Paper): string =>
  must(layoutPaper(paper, loadFaces()))
    .pages.flatMap((page) => page.items)
    .flatMap((item) => (item.kind === 'text' ? [item.text] : []))
    .join(' ');

describe('buildWeighingSheet', () => {
  it('makes a table of each stage, in the order of stages, with room for weight and initials', () => {
    const paper = buildWeighingSheet(sheet);
    expect(paper.tables.map(({ heading }) => heading)).toEqual(['Melt', 'Scent']);
    expect(paper.tables[0]?.rows).toEqual([
      ['Shea butter', 'SB-07', '640', '', 'Big, 1 g', '', ''],
      ['Cocoa butter', 'CB-11', '180', '', 'Big, 1 g', '', ''],
    ]);
    expect(paper.tables[1]?.rows[0]?.[0]).toEqual({
      text: 'Cedar oil',
      remark: 'Below the smallest weight of this scale: weigh a premix.',
    });
    expect(paper.tables[0]?.columns.filter((column) => column.isForHand)).toHaveLength(2);
  });

  it('boxes a warning on a trial batch, and none on one for sale', () => {
    expect(buildWeighingSheet(sheet).banner).toBeUndefined();
    expect(wordsOf(buildWeighingSheet({ ...sheet, purpose: 'trial' }))).toContain(
      'Trial batch. Never for sale.',
    );
  });

  it('adds the steps of the method, numbered', () => {
    const paper = buildWeighingSheet({ ...sheet, steps: [{ what: 'Melt.' }, { what: 'Cool.' }] });
    expect(paper.tables.at(-1)?.rows.map((row) => row.slice(0, 2))).toEqual([
      ['1', 'Melt.'],
      ['2', 'Cool.'],
    ]);
  });

  it('has in its boxes what is done already, with when and by whom', () => {
    const done = { what: '639.5 g', when: '10:12', who: 'AQ' };
    const rows = sheet.rows.map((row, index) => (index === 0 ? { ...row, done } : row));
    const steps = [{ what: 'Melt.', done: { ...done, what: '74 °C' } }, { what: 'Cool.' }];
    const words = wordsOf(buildWeighingSheet({ ...sheet, rows, steps }));
    for (const each of ['639.5 g', '74 °C', '10:12', 'AQ']) expect(words).toContain(each);
    expect(wordsOf(buildWeighingSheet(sheet))).not.toContain('10:12');
  });

  it('prints the day, the size, the cautions and lines to sign on', () => {
    const words = wordsOf(buildWeighingSheet({ ...sheet, makeOn: '2026-11-27' }));
    for (const part of [
      'CO-0418',
      '1 180 g',
      '27 November 2026',
      'Cap back on at once.',
      'Weighed by, date',
      workshopName,
    ]) {
      expect(words).toContain(part);
    }
    expect(wordsOf(buildWeighingSheet(sheet))).toContain('not planned yet');
  });

  it('stands empty where there is nothing to weigh', () => {
    expect(wordsOf(buildWeighingSheet({ ...sheet, rows: [] }))).toContain('Nothing in this list.');
  });
});

describe('buildPickList', () => {
  const lines = [
    {
      productName: 'Body butter',
      units: 22,
      batchNumber: 'CO-0418',
      place: 'Shelf 2',
      bestBefore: '2027-05',
    },
    { productName: 'Balm', units: 6, batchNumber: 'PB-0102', place: 'Stall box' },
  ];
  it('adds the units up and says where each line stands', () => {
    const paper = buildPickList({
      workshopName,
      orderNumber: '124',
      customerName: 'The Tinderbox Shop',
      sendBy: '2026-11-27',
      lines,
      notes: [],
      createdAt,
    });
    expect(paper.facts).toContainEqual(['Order', '124, The Tinderbox Shop']);
    expect(paper.facts).toContainEqual(['Units in all', '28']);
    expect(paper.tables[0]?.rows).toEqual([
      ['22', 'Body butter', 'Shelf 2', 'CO-0418', 'May 2027', ''],
      ['6', 'Balm', 'Stall box', 'PB-0102', '', ''],
    ]);
    expect(wordsOf(paper)).toContain('27 November 2026');
  });
});

describe('buildPackingSlip', () => {
  it('shows both addresses, the order, its day and the day of the slip, and the batch number of each line', () => {
    const paper = buildPackingSlip({
      sender: { name: workshopName, addressLines: ['3 Mill Yard', '', 'Hollinsby'] },
      customer: { name: 'The Tinderbox Shop', addressLines: ['41 Upper Row', 'Wexcombe'] },
      orderNumber: '124',
      placedOn: '2026-11-20',
      date: '2026-11-27',
      hasGone: false,
      lines: [
        {
          productName: 'Body butter',
          declaredContent: '80 g',
          units: 22,
          batchNumber: 'CO-0418',
          bestBefore: '2027-05-31',
        },
        { productName: 'Balm', units: 6, batchNumber: 'PB-0102' },
      ],
      createdAt,
    });
    expect(paper.facts).toEqual([
      ['To', 'The Tinderbox Shop\n41 Upper Row\nWexcombe'],
      ['From', 'Larkfold Butters\n3 Mill Yard\nHollinsby'],
      ['Order', '124'],
      ['Order taken on', '20 November 2026'],
      ['Slip drawn up on', '27 November 2026'],
    ]);
    expect(paper.tables[0]?.rows[0]).toEqual(['22', 'Body butter', '80 g', 'CO-0418', '31 May 2027']);
    expect(paper.tables[0]?.totals?.[0]).toBe('28');
    expect(wordsOf(paper)).toContain('Please keep this slip');
  });

  it('calls the day of a parcel that went the day on which it was sent', () => {
    const party = { name: workshopName, addressLines: [] };
    const days = { placedOn: '2026-11-20', date: '2026-11-26', hasGone: true };
    const order = { sender: party, customer: party, orderNumber: '124', lines: [], createdAt };
    expect(buildPackingSlip({ ...order, ...days }).facts).toContainEqual(['Sent on', '26 November 2026']);
  });
});
