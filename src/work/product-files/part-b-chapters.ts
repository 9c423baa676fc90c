import { sayDateWithYear } from '../../words/index.ts';
import { saying } from '../saying.ts';
import { labelRule } from './label-rule.ts';
import type { FileData } from './read-file-data.ts';
import { type Chapter, chapter, entry } from './write-chapter.ts';

const PARTS = ['cpsr-b1', 'cpsr-b2', 'cpsr-b3', 'cpsr-b4'] as const;

/** Part B is the assessor's: what is known of the report that holds it, and nothing else. */
export function partBChapters({ report, today }: FileData): Chapter[] {
  return [
    chapter('part-b', 2, saying('pf-part-b'), {
      source: saying('pf-annex-part', { part: 'B' }),
      state: report === null ? 'missing' : 'assessor',
      says: [saying('pf-part-b-says')],
      cautions: report && report.report.details.reviewBy < today ? [saying('pf-report-past')] : [],
      entries: [
        ...PARTS.map((id) => {
          const { rule, number } = labelRule(id);
          return entry(saying('pf-part-b-heading', { number: number ?? 0 }), rule);
        }),
        ...(report === null ? [entry(saying('pf-report'), saying('pf-missing'))] : entriesOf(report.report)),
      ],
    }),
  ];
}

const entriesOf = ({ details, row }: NonNullable<FileData['report']>['report']) => [
  entry(saying('pf-report'), details.reference),
  entry(saying('pf-assessor'), details.assessor),
  entry(saying('pf-signed'), sayDateWithYear(details.signedOn)),
  entry(saying('pf-review-by'), sayDateWithYear(details.reviewBy)),
  entry(saying('pf-report-file'), row.file_name ?? saying('pf-missing')),
];
