import type { Reader } from '../../storage/index.ts';
import { cleaningWords, say } from '../../words/index.ts';
import { saying } from '../saying.ts';
import type { RunRecords } from './run-records.ts';
import type { Check, RunView } from './run-shapes.ts';
import { viewLoss } from './view-loss.ts';
import { viewReady } from './view-ready.ts';

type Ready = RunView['ready'];
const told = (name: string, isToSee: boolean, detail: Check['detail']): Check => ({
  check: name,
  isPassed: true,
  ...(isToSee && { isToSee }),
  detail,
});

/**
 * What a release sees of the bench before the first tin, of the counted pieces and of what stayed behind. Nothing of it
 * stops tins: that the area is clear is asked before one is filled.
 */
export async function checkReady(db: Reader, records: RunRecords): Promise<Check[]> {
  const ready = viewReady(records.ready);
  return [
    checkArea(ready),
    checkContainers(ready),
    ...checkCounts(records),
    ...(await checkLoss(db, records)),
  ];
}

function checkArea({ area }: Ready): Check {
  if (!area) return told('area', true, saying('check-area-unsaid'));
  return area.isClear
    ? told('area', false, saying('check-area-clear'))
    : told('area', true, saying('check-area-not-clear', { reason: area.reason }));
}

function checkContainers({ containers }: Ready): Check {
  if (!containers) return told('containers', true, saying('check-containers-unsaid'));
  const { method, remark } = containers;
  const how = [cleaningWords[method], ...(remark === '' ? [] : [remark])].join(', ');
  return told('containers', false, saying('check-containers', { how }));
}

/** Of what was counted out and counted back; what nobody counted is no question here. */
function checkCounts({ counts }: RunRecords): Check[] {
  const known = counts.flatMap((row) =>
    row.issued === null || row.back === null
      ? []
      : [{ ...row, missing: row.issued - row.used - row.spoilt - row.back }],
  );
  if (known.length === 0) return [];
  const missing = known.filter((row) => row.missing > 0);
  if (missing.length === 0) return [told('counts', false, saying('check-counts-add-up'))];
  const which = missing.map((row) =>
    say(saying('count-missing-part', { part: row.part, missing: row.missing })),
  );
  return [told('counts', true, saying('check-counts-missing', { which: which.join(', ') }))];
}

async function checkLoss(db: Reader, records: RunRecords): Promise<Check[]> {
  const loss = await viewLoss(db, records);
  return loss?.isAbnormal ? [told('loss', true, loss.says)] : [];
}
