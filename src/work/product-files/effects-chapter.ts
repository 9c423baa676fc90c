import { ratePerThousand } from '../../core/product-file/index.ts';
import type { SoldTins } from '../../storage/index.ts';
import { complaintWords, sayDateWithYear, sayDecimal } from '../../words/index.ts';
import type { ComplaintView } from '../complaints/index.ts';
import { saying } from '../saying.ts';
import { labelRule } from './label-rule.ts';
import { type Chapter, chapter, entry, figure, tableOf, type Words, word } from './write-chapter.ts';

export const unitsOf = (sold: readonly SoldTins[]): number => sold.reduce((sum, row) => sum + row.units, 0);

const ratedBy = (rows: readonly ComplaintView[], units: number): Words => {
  const rate = ratePerThousand(rows.length, units);
  return rate === null
    ? saying('pf-effects-no-rate', { n: rows.length })
    : saying('pf-effects-rate', { n: rows.length, rate: sayDecimal(rate) });
};

/** Part A, 9: what customers said, counted against what was sold. */
export function effectsChapter(
  complaints: readonly ComplaintView[],
  sold: readonly SoldTins[],
  rest: Partial<Chapter> = {},
): Chapter {
  const units = unitsOf(sold);
  const of = (effect: ComplaintView['effect']) => complaints.filter((row) => row.effect === effect);
  return chapter('effects', 2, labelRule('cpsr-a9').rule, {
    ...rest,
    says: [labelRule('sue-def').rule, saying('pf-effects-says')],
    entries: [
      entry(saying('pf-effects-sold'), saying('pf-units', { n: units })),
      entry(saying('pf-effects-serious'), ratedBy(of('serious'), units)),
      entry(saying('pf-effects-undesirable'), ratedBy(of('undesirable'), units)),
      entry(saying('pf-effects-none'), ratedBy(of('none'), units)),
    ],
    tables: complaintTable(complaints),
  });
}

export function complaintTable(complaints: readonly ComplaintView[]) {
  const rows = complaints.map((row): Words[] => [
    sayDateWithYear(row.receivedOn),
    row.batchNumber ?? complaintWords.noBatch,
    complaintWords.kinds[row.details.kind],
    row.details.said,
    complaintWords.effects[row.effect],
    complaintWords.states[row.state],
  ]);
  const columns = [
    word(saying('pf-col-received')),
    word(saying('pf-col-batch')),
    word(saying('pf-col-kind')),
    word(saying('pf-col-said')),
    word(saying('pf-col-counts')),
    word(saying('pf-col-state')),
  ];
  return tableOf(saying('pf-table-complaints'), columns, rows);
}

/** Batches of it that were released, with what went out of each. */
export function batchTable(
  batches: readonly {
    readonly number: string;
    readonly madeOn: string;
    readonly releasedOn: string;
    readonly units: number;
    readonly sent: number;
  }[],
) {
  const rows = batches.map((row): Words[] => [
    row.number,
    sayDateWithYear(row.madeOn),
    sayDateWithYear(row.releasedOn),
    sayDecimal(row.units),
    sayDecimal(row.sent),
  ]);
  const columns = [
    word(saying('pf-col-batch')),
    word(saying('pf-col-made')),
    word(saying('pf-col-released')),
    figure(saying('pf-col-units')),
    figure(saying('pf-col-sent')),
  ];
  return tableOf(saying('pf-table-batches'), columns, rows);
}
