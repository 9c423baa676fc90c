import type { productFiles } from '../../contract/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { isReviewClose } from '../../core/safety/index.ts';
import { printWords, sayDateWithYear } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { changesChapters, countChanges, sayChanges } from './changes-chapters.ts';
import { paintWritten } from './lay-out-written.ts';
import { type ReportChanges, readChanges } from './read-changes.ts';
import { entry } from './write-chapter.ts';
import { plainName } from './zip-folder.ts';

/** What goes to the assessor when a report is renewed: all that changed since it was signed. */
export const getReportChanges: UseCase<'getReportChanges'> = async (context, { params: { id = '' } }) => {
  const changes = await readChanges(context, id);
  return changes.ok ? done(write(changes.value)) : changes;
};

export const getReportChangesPdf: UseCase<'getReportChangesPdf'> = async (
  context: Context,
  { params: { id = '' } },
): Promise<Result<{ fileName: string; bytes: Uint8Array }>> => {
  const changes = await readChanges(context, id);
  if (!changes.ok) return changes;
  const { reference } = changes.value.report.details;
  const fileName = `${printWords.written.names.changes}-${plainName(reference)}.pdf`;
  return paintWritten(fileName, write(changes.value), changes.value.house);
};

function write(changes: ReportChanges): productFiles.WrittenPaper {
  const { details } = changes.report;
  const counts = countChanges(changes);
  return {
    title: saying('changes-title', { reference: details.reference }),
    subtitle: saying('changes-subtitle'),
    sentence: saying('changes-says', {
      reference: details.reference,
      signedOn: details.signedOn,
      n: Object.values(counts).reduce((sum, n) => sum + n, 0),
      which: sayChanges(counts),
      review: reviewOf(details.reviewBy, changes.today),
      reviewBy: details.reviewBy,
    }),
    asOf: changes.asOf,
    facts: [
      entry(saying('pf-assessor'), details.assessor),
      entry(saying('pf-signed'), sayDateWithYear(details.signedOn)),
      entry(saying('pf-review-by'), sayDateWithYear(details.reviewBy)),
    ],
    missing: [],
    chapters: changesChapters(changes),
  };
}

const reviewOf = (reviewBy: string, today: string): 'past' | 'close' | 'later' => {
  if (reviewBy < today) return 'past';
  return isReviewClose(reviewBy, today) ? 'close' : 'later';
};
