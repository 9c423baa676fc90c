import { printWords } from '../../words/index.ts';
import type { RevisionView } from '../formulas/index.ts';
import { saying } from '../saying.ts';
import { ruleAsHeading } from './label-rule.ts';
import { type Chapter, chapter, entry, tableOf, typed, type Words, word } from './write-chapter.ts';

/** How it is made, as it is written down: the bases first, then what is made of them. */
export const methodChapter = (
  revisions: readonly RevisionView[],
  { gmpStatement, makingNote }: { readonly gmpStatement: string; readonly makingNote: string },
  rest: Partial<Chapter> = {},
): Chapter =>
  chapter('method', 1, ruleAsHeading('pif-3'), {
    ...rest,
    says: typed(makingNote),
    entries: gmpStatement === '' ? [] : [entry(saying('pf-gmp'), gmpStatement)],
    tables: stepTable(revisions),
  });

export function stepTable(revisions: readonly RevisionView[]) {
  const rows = revisions
    .flatMap(({ details }) => details.steps)
    .map((step, index): Words[] => [
      String(index + 1),
      step.stage,
      printWords.batchRecord.stepText(step.what, step.leastCelsius, step.mostCelsius, step.minutes, step),
      step.caution,
    ]);
  const columns = [
    word(saying('pf-col-number')),
    word(saying('pf-col-stage')),
    word(saying('pf-col-step')),
    word(saying('pf-col-caution')),
  ];
  return tableOf(saying('pf-table-steps'), columns, rows);
}
