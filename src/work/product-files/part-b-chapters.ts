import { checkWords, sayDateWithYear } from '../../words/index.ts';
import { saying } from '../saying.ts';
import type { CoveringReport } from './find-report-of.ts';
import { labelRule } from './label-rule.ts';
import type { FileData } from './read-file-data.ts';
import { type Chapter, chapter, entry } from './write-chapter.ts';

const PARTS = ['cpsr-b1', 'cpsr-b2', 'cpsr-b3', 'cpsr-b4'] as const;

/** Part B is the assessor's: what is known of the report that holds it, and nothing else. */
export function partBChapters({ reports, today }: FileData): Chapter[] {
  const covering = reports?.covering ?? [];
  return [
    chapter('part-b', 2, saying('pf-part-b'), {
      source: saying('pf-annex-part', { part: 'B' }),
      state: covering.length === 0 ? 'missing' : 'assessor',
      says: [saying('pf-part-b-says')],
      cautions: covering.some(({ report }) => report.details.reviewBy < today)
        ? [saying('pf-report-past')]
        : [],
      entries: [
        ...PARTS.map((id) => {
          const { rule, number } = labelRule(id);
          return entry(saying('pf-part-b-heading', { number: number ?? 0 }), rule);
        }),
        ...(covering.length === 0
          ? [entry(saying('pf-report'), saying('pf-missing'))]
          : covering.flatMap(entriesOf)),
      ],
    }),
  ];
}

const entriesOf = ({ report: { details, row }, markets }: CoveringReport) => [
  entry(saying('pf-report'), details.reference),
  entry(saying('pf-report-for'), markets.map((market) => checkWords.market[market]).join(', ')),
  entry(saying('pf-assessor'), details.assessor),
  entry(saying('pf-signed'), sayDateWithYear(details.signedOn)),
  entry(saying('pf-review-by'), sayDateWithYear(details.reviewBy)),
  entry(saying('pf-report-file'), row.file_name ?? saying('pf-missing')),
];
