import { type Checked, listOtherStatements } from '../../check/index.ts';
import type { Saying } from '../../contract/index.ts';
import { type Problem, problem, type Result } from '../../core/problem.ts';
import {
  findBatch,
  type LotAtHand,
  listBatchSteps,
  listDeviations,
  listLabelPrints,
  listLotsAtHand,
  listOpenClaims,
  listStepRecords,
  type Reader,
  type SignedRelease,
} from '../../storage/index.ts';
import { labelWords, say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { judgeForSale } from '../formulas/index.ts';
import { findOutdatedPrints } from '../labels/find-outdated-prints.ts';
import { composeRunLabel } from '../labels/run-label.ts';
import { checkAsMade } from '../making/check-as-made.ts';
import { judgeWeighed } from '../making/judge-weighed.ts';
import { judgeWorstCase, sayWorstCase } from '../making/judge-worst-case.ts';
import { findMadeLookup } from '../making/made-lookup.ts';
import { findOlderBases } from '../making/older-bases.ts';
import { saying } from '../saying.ts';
import { walkLots } from '../trace/walk-lots.ts';
import { checkReady } from './check-ready.ts';
import { labelCheckOf } from './cleared-markets.ts';
import { findOldLabels, isTooOld, sayOldLabel } from './find-old-labels.ts';
import { judgeLotDates } from './judge-lot-dates.ts';
import { judgeRecords, standing, weighedHeld } from './judge-records.ts';
import { wayNow } from './measure-way.ts';
import type { RunRecords } from './run-records.ts';
import type { Check } from './run-shapes.ts';

const check = (name: string, isPassed: boolean, detail: Saying): Check => ({
  check: name,
  isPassed,
  detail,
});

/** Stops nothing, and whoever releases should have seen it. */
const toSee = (name: string, isToSee: boolean, detail: Saying): Check => ({
  ...check(name, true, detail),
  isToSee,
});

/** As they stood when the run was released or rejected. */
export const readChecks = (release: SignedRelease): Check[] => JSON.parse(release.checks) as Check[];

export const failedChecks = (checks: readonly Check[], timeZone: string): Problem[] =>
  checks
    .filter((each) => !each.isPassed)
    .map((each) =>
      problem('release-check-failed', each.check, { parameters: { reason: say(each.detail, { timeZone }) } }),
    );

/**
 * What a release looks at: that it was made for sale, that each weight stands, the limits and the report as of today,
 * every lot behind the tins, the label of each market, and what was done differently.
 * Source: ISO 22716:2007, clauses 7 and 8 (release by the person in charge after review of the record).
 */
export async function checkRelease(context: Context, records: RunRecords): Promise<Check[]> {
  const { db } = context.storage;
  const made = await findMadeLookup(db, records.head.batch_id);
  const product = { id: records.head.product_id, name: records.details.name };
  const checked = await checkAsMade(context, records.head.revision_id, records.markets, made, [product]);
  return [
    checkPurpose(records),
    checkWeights(records),
    ...checkTares(records),
    ...checkMarkets(records),
    ...checkSale(checked),
    ...checkStatements(checked),
    ...(await checkContents(context, records, checked)),
    await checkLots(context, records),
    ...(await checkClaims(db, records)),
    ...(await checkLabels(context, records)),
    ...(await checkOldLabels(context, records)),
    ...(await checkReady(db, records)),
    checkSample(records),
    await checkSteps(db, records),
    await checkDeviations(db, records),
  ];
}

const checkPurpose = ({ head }: RunRecords): Check =>
  head.purpose === 'sale'
    ? check('purpose', true, saying('check-made-for-sale'))
    : check('purpose', false, saying('check-made-as-trial', { batch: head.batch_number }));

function checkWeights(records: RunRecords): Check {
  const verdict = judgeRecords(records);
  if (records.details.fillBasis === 'average' && verdict.isScaleFineEnough === false)
    return check('weights', false, saying('check-scale-too-coarse'));
  const held = weighedHeld(records);
  if (held.length > 0) {
    const facts = { count: held.length, which: held.map((row) => row.tin).join(', ') };
    return check('weights', false, saying('check-weights-scale-held', facts));
  }
  const units = records.close?.units ?? 0;
  if (units === 0) return check('weights', false, saying('check-no-tins'));
  return verdict.verdict === 'accept'
    ? check('weights', true, saying('check-weights-accepted', { units }))
    : check('weights', false, saying('check-weights-rejected', { units }));
}

/** Where the mean of empty tins was taken off and nobody weighed how they differ, a heavier tin holds less than it seems to. */
function checkTares(records: RunRecords): Check[] {
  const isMean = standing(records).some(({ way }) => way === 'mean');
  return isMean && wayNow(records.head).tareSpreadUg === null
    ? [toSee('tares', true, saying('check-tares-unknown'))]
    : [];
}

/**
 * An order knows no market: tins go wherever their product is sold. A market that it got while they were on the bench is
 * checked as the others are; one that it got after they were decided upon was never looked at.
 */
function checkMarkets({ details, markets, soldIn, release }: RunRecords): Check[] {
  const unseen = soldIn.filter((market) => !markets.includes(market));
  if (release && unseen.length > 0)
    return [check('markets', false, saying('check-markets-unseen', { markets: unseen.join(', ') }))];
  const added = markets.filter((market) => !details.markets.includes(market));
  return added.length === 0
    ? []
    : [toSee('markets', true, saying('check-markets-added', { markets: added.join(', ') }))];
}

/** The revision is checked anew: a limit may have come, or the report may have run out, since the batch was begun. */
function checkSale(checked: Result<Checked>): Check[] {
  if (!checked.ok) return [check('limits', false, saying('check-limits-not-known'))];
  // A report past its review day is told by the report's own check.
  const [first] = judgeForSale(checked.value).hindrances.filter(
    ({ code }) => code !== 'sale-report-review-passed',
  );
  return [
    first ? check('limits', false, first) : check('limits', true, saying('check-limits-kept')),
    ...checkReport(checked.value),
  ];
}

/** What a supplier states for another category answers nothing here: whoever releases is told that it is not known. */
function checkStatements(checked: Result<Checked>): Check[] {
  const others = checked.ok ? listOtherStatements(checked.value.opened) : [];
  if (others.length === 0) return [];
  const which = others.map((other) =>
    say(
      saying('ifra-statement-elsewhere', {
        ...other,
        lot: other.lotNumber,
        isFor: other.isFor.join(', '),
        needed: other.needed.join(', '),
      }),
    ),
  );
  return [toSee('ifra', true, saying('check-ifra-not-known', { which: which.join('; ') }))];
}

/** As the bench told it when it was weighed in, with the limits and the report of today. */
async function checkWeighed(
  context: Context,
  { head, markets }: RunRecords,
  written: Result<Checked>,
): Promise<Check> {
  const wrong = await judgeWeighed(context, {
    batchId: head.batch_id,
    revisionId: head.revision_id,
    markets,
    written,
  });
  return check('weighed', wrong === null, wrong ?? saying('check-weighed-kept'));
}

/** What is over as it was weighed is not told to keep its limits at the errors of the scales. */
async function checkContents(
  context: Context,
  records: RunRecords,
  written: Result<Checked>,
): Promise<Check[]> {
  const weighed = await checkWeighed(context, records, written);
  const worst = await checkWorstCase(context, records);
  return [weighed, ...worst.filter(({ detail }) => weighed.isPassed || detail.code !== 'check-worst-kept')];
}

/** With every weighing as wrong as its scale may be: held until a named person decided. */
async function checkWorstCase(context: Context, { head }: RunRecords): Promise<Check[]> {
  const batch = await findBatch(context.storage.db, head.batch_id);
  const worst = batch && (await judgeWorstCase(context, batch));
  if (!worst) return [];
  const detail = sayWorstCase(worst, say);
  const isPassed = !worst.isHeld || worst.decided?.verdict === 'accepted';
  return [worst.isHeld && isPassed ? toSee('worst', true, detail) : check('worst', isPassed, detail)];
}

/** Where there is no report at all, the check of the limits has said so. */
function checkReport({ groups, today }: Checked): Check[] {
  const reports = groups.flatMap(({ report }) => (report === undefined ? [] : [report.details]));
  const past = reports.find((report) => report.reviewBy < today);
  if (past) {
    const facts = { report: past.reference, reviewBy: past.reviewBy };
    return [check('report', false, saying('check-report-past', facts))];
  }
  return reports.length === 0 ? [] : [check('report', true, saying('check-report-valid'))];
}

/**
 * A lot blocked, rejected or put back into quarantine since it was used stops every tin that it went into, through bases
 * too: whatever goes into anything was released then. The tins' own lot counts until they are released once: it waits in
 * quarantine for this decision, and afterwards it is what is being decided on.
 */
async function checkLots(context: Context, records: RunRecords): Promise<Check> {
  const { db } = context.storage;
  const { head, bowl, tins, release } = records;
  const start = tins?.id ?? head.bulk_lot_id;
  const reached = start === null ? [] : (await walkLots(db, [start], 'back')).reached;
  const own = [release ? undefined : tins, bowl].flatMap((lot) => (lot ? [lot.id] : []));
  const ids = new Set([...own, ...reached.map((lot) => lot.lotId)]);
  const lots = await listLotsAtHand(db, { lotIds: [...ids] });
  const bad = lots.filter(
    ({ id, status }) => status !== 'released' && !(id === tins?.id && status === 'quarantine'),
  );
  const [first] = bad;
  const older = await findOlderBases(db, lots);
  const revised = lots.find((lot) => older.has(lot.id));
  if (!first && revised) {
    const facts = { lot: revised.number, item: revised.item_name };
    return check('lots', false, saying('check-base-revised', facts));
  }
  const behind = lots.filter(({ id }) => id !== tins?.id);
  const misdated = first ? null : await judgeLotDates(context, records, behind);
  if (misdated) return check('lots', false, misdated);
  return first
    ? check(
        'lots',
        false,
        saying('check-lot-stopped', {
          lot: first.number,
          item: first.item_name,
          reason: first.status_reason,
          count: bad.length,
        }),
      )
    : seeGoodLots(behind);
}

/**
 * What a tablet brought late of any batch behind the tins, through bases too, and nobody answered: whether it is in the
 * bowl nobody knows. Those of the run's own batch and of the run are told with them.
 */
async function checkClaims(db: Reader, { head, bowl, tins }: RunRecords): Promise<Check[]> {
  const open = await listOpenClaims(db);
  if (open.length === 0) return [];
  const start = tins?.id ?? head.bulk_lot_id;
  const { reached } = await walkLots(db, start === null ? [] : [start], 'back');
  const behind = await listLotsAtHand(db, { lotIds: reached.map(({ lotId }) => lotId) });
  const subjects = [
    { id: head.id, number: head.number },
    ...[bowl, ...behind].flatMap((lot) => (lot?.batch_id ? [{ id: lot.batch_id, number: lot.number }] : [])),
  ];
  const asking = open.filter(({ subject_id }) => subjects.some(({ id }) => id === subject_id));
  if (asking.length === 0) return [];
  const asked = subjects.filter(({ id }) => asking.some(({ subject_id }) => subject_id === id));
  const which = [...new Set(asked.map(({ number }) => number))].join(', ');
  return [check('claims', false, saying('check-claims-open', { count: asking.length, which }))];
}

/** Tins end with the first lot that does. Where nobody knows when one ends that cannot be counted in, so it is shown. */
function seeGoodLots(lots: readonly LotAtHand[]): Check {
  const undated = lots.filter(
    (lot) => lot.item_kind === 'material' && lot.unit === 'g' && lot.best_before === null,
  );
  const which = undated.map(({ number, item_name }) => `${item_name}, ${number}`).join('; ');
  const facts = { count: lots.length, undated: undated.length, which };
  return toSee('lots', undated.length > 0, saying('check-lots-good', facts));
}

/** Complete, and what was printed for these tins says what the label says today: a new paper of a lot may have changed it. */
async function checkLabels(context: Context, records: RunRecords): Promise<Check[]> {
  const checks: Check[] = [];
  const prints = await listLabelPrints(context.storage.db, records.head.id);
  for (const market of records.markets) {
    const { missing, pieces } = await composeRunLabel(context, records, market);
    const found = await findOutdatedPrints(context, { records, market, pieces }, prints);
    const outdated = found.map(({ role }) => labelWords.roles[role]);
    const [wrong] = [
      ...missing,
      ...(outdated.length === 0
        ? []
        : [saying('check-label-printed-before', { market, pieces: outdated.join(', ') })]),
    ];
    const complete = saying('check-label-complete', { market });
    checks.push(check(labelCheckOf(market), wrong === undefined, wrong ?? complete));
  }
  return checks;
}

/** Labels that were printed before a newer law on fragrance allergens began: tins with them have their last days. */
async function checkOldLabels(context: Context, { head, tins }: RunRecords): Promise<Check[]> {
  if (!tins) return [];
  const old = (await findOldLabels(context, [tins])).get(tins.id) ?? [];
  return old.map((each) => {
    const name = `label-age-${each.market}`;
    const detail = sayOldLabel(each, head.number);
    return isTooOld(each) ? check(name, false, detail) : toSee(name, true, detail);
  });
}

const checkSample = ({ close }: RunRecords): Check =>
  close?.declined_because
    ? toSee('sample', true, saying('check-no-sample', { reason: close.declined_because }))
    : check('sample', true, saying('check-sample-kept'));

/** Told, not judged: a step without a record is for the person who releases to weigh. */
async function checkSteps(db: Reader, { head }: RunRecords): Promise<Check> {
  const steps = await listBatchSteps(db, head.batch_id);
  const records = (await listStepRecords(db, head.batch_id)).filter((row) => !row.is_struck);
  const open = steps.filter((step) => !records.some((row) => row.position === step.position));
  return toSee('steps', open.length > 0, saying('check-steps', { steps: steps.length, open: open.length }));
}

async function checkDeviations(db: Reader, { head }: RunRecords): Promise<Check> {
  const deviations = await listDeviations(db, head.batch_id);
  return toSee(
    'deviations',
    deviations.length > 0,
    saying('check-deviations', {
      count: deviations.length,
      which: deviations.map((row) => row.what).join('; '),
    }),
  );
}
