import type { trace } from '../../contract/index.ts';
import { isReviewClose } from '../../core/safety/index.ts';
import { type ComplaintView, viewComplaints } from '../complaints/index.ts';
import type { Context } from '../context.ts';
import { listShakenRuns, type ShakenRun } from '../filling/look-back.ts';
import { type ReportDetails, readAllReports } from '../formulas/report-view.ts';
import { saying } from '../saying.ts';

type Line = trace.MorningLine;

/** What lies on the desk and not at the bench: tins to call back, serious effects, then reports by the day of their review. */
export async function listPapers(context: Context, today: string): Promise<Line[]> {
  const complaints = await viewComplaints(context);
  const reports = await readAllReports(context.storage.db);
  const shaken = await listShakenRuns(context);
  return [
    ...shaken.map(lineOfRun),
    ...complaints
      .filter(({ effect, state }) => effect === 'serious' && state === 'open')
      .map(lineOfComplaint),
    ...reports
      .filter(({ details }) => details.reviewBy < today || isReviewClose(details.reviewBy, today))
      .map(({ row, details }) => lineOfReport(row.id, details, today)),
  ];
}

/** Tins that were let go before somebody knew better. */
const lineOfRun = ({ head, tins, says }: ShakenRun): Line => ({
  key: `shaken ${head.id}`,
  title: `${tins.number}, ${tins.item_name}`,
  state: 'stop',
  stateWord: saying('morning-shaken'),
  detail: [saying('morning-shaken-says', { units: tins.on_hand }), ...says],
  action: { words: saying('morning-shaken-look'), to: `/shelf/lots/${tins.id}` },
  level: null,
});

const lineOfComplaint = (complaint: ComplaintView): Line => ({
  key: `complaint ${complaint.id}`,
  title: complaint.productName,
  state: 'stop',
  stateWord: saying('morning-serious-open'),
  detail: [
    saying('morning-serious'),
    saying('morning-serious-received', { receivedOn: complaint.receivedOn }),
    ...complaint.tellings.map(({ by, isPast }) =>
      by === null
        ? saying('morning-serious-at-once')
        : saying('morning-serious-by', { by, isPast: isPast ? 'yes' : 'no' }),
    ),
  ],
  action: { words: saying('morning-look'), to: `/complaints/${complaint.id}` },
  level: null,
});

function lineOfReport(id: string, { reference, reviewBy }: ReportDetails, today: string): Line {
  const isPast = reviewBy < today;
  return {
    key: `report ${id}`,
    title: reference,
    state: isPast ? 'stop' : 'watch',
    stateWord: saying(isPast ? 'morning-report-past' : 'morning-report-close'),
    detail: [saying('morning-report-by', { reviewBy, isPast: isPast ? 'yes' : 'no' })],
    action: { words: saying('morning-report-changes'), to: `/reports/${id}/changes` },
    level: null,
  };
}
