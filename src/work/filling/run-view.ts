import type { RunVerdict } from '../../core/filling/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import { type Exact, toText } from '../../core/quantity/index.ts';
import type { RunCountRow, RunHead, SignedWeight } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { gramsText } from '../quantity-text.ts';
import { thingNotFound } from '../record.ts';
import { viewClaimsOf } from '../view-claim.ts';
import { findRunBestBefore } from './best-before.ts';
import { countingTins, errorGramsOf, judgeRecords, judgeWeight } from './judge-records.ts';
import { wayNow } from './measure-way.ts';
import { netGramsOf } from './net-grams-of.ts';
import { checkRelease, readChecks } from './release-checks.ts';
import { gatherRun, isGone, type RunRecords } from './run-records.ts';
import { sayRun } from './run-sentence.ts';
import type { Check, RunView } from './run-shapes.ts';
import { stateOf } from './run-state.ts';
import { viewAir } from './view-air.ts';
import { viewLoss } from './view-loss.ts';
import { bowlLeftUg, viewOthers } from './view-others.ts';
import { viewReady } from './view-ready.ts';

export async function viewRun(context: Context, id: string): Promise<Result<RunView>> {
  const records = await gatherRun(context.storage.db, id);
  if (!records) return refused(thingNotFound('id', id));
  const waits = stateOf(records) === 'closed';
  const checks = waits ? await checkRelease(context, records) : [];
  const loss = await viewLoss(context.storage.db, records);
  const view = await viewRecords(context, records, checks, loss);
  const air = view.state === 'filling' ? await viewAir(context.storage.db, records) : null;
  return done({ ...view, air, claims: await viewClaimsOf(context.storage.db, 'filling-run', id) });
}

/**
 * `checks`: of a run that waits for its release, worked out for whoever looks at it alone; later they are as signed. So is
 * what stayed behind.
 */
export async function viewRecords(
  context: Context,
  records: RunRecords,
  checks: readonly Check[] = [],
  loss: Loss = null,
): Promise<RunView> {
  const { head, details, close, release, tins } = records;
  const verdict = judgeRecords(records);
  const state = stateOf(records);
  const summary = summarise(records, verdict);
  return {
    id: head.id,
    number: head.number,
    batchId: head.batch_id,
    batchNumber: head.batch_number,
    purpose: head.purpose as RunView['purpose'],
    formulaId: head.formula_id,
    productId: head.product_id,
    productName: details.name,
    markets: [...records.markets],
    state,
    startedAt: head.started_at,
    wanted: head.wanted,
    declaredGrams: details.declaredGrams,
    aimGrams: gramsText(head.aim_ug),
    fillBasis: details.fillBasis,
    tolerableErrorGrams: orNull(verdict.limits?.tolerableError),
    limit1Grams: orNull(verdict.limits?.limit1),
    limit2Grams: orNull(verdict.limits?.limit2),
    ...viewWay(head),
    tinGrams: records.tinGrams,
    ready: viewReady(records.ready),
    parts: { hasLid: details.lidId !== null, hasLabel: details.labelId !== null },
    others: viewOthers(records),
    scale: {
      id: head.scale_id,
      name: records.scale?.name ?? '',
      readabilityGrams: records.scale?.readability_grams ?? '',
      worstErrorGrams: gramsText(wayNow(head).scaleErrorUg),
    },
    bowlLeftGrams: gramsText(bowlLeftUg(records)),
    ...viewSample(records),
    labelsPrinted: records.labelsPrinted,
    bulkOnHandGrams: gramsText(records.bowl?.on_hand ?? 0),
    weights: records.weights.map((row) => viewWeight(records, row, verdict)),
    summary,
    air: null,
    sentence: sayRun(state, records, summary, checks),
    closing: closingOf(records, loss),
    lotId: close?.lot_id ?? null,
    bestBefore: tins?.best_before ?? (await findRunBestBefore(context, records)),
    checks: release ? readChecks(release) : [...checks],
    release: release
      ? {
          verdict: release.verdict as 'released' | 'rejected',
          by: release.person_name,
          reason: release.reason,
          at: release.happened_at,
        }
      : null,
    claims: [],
  };
}

const orNull = (value: Exact | undefined): string | null => (value === undefined ? null : toText(value));

type Loss = NonNullable<RunView['closing']>['loss'];

const viewWay = (head: RunHead) => {
  const { way, tares, tareSpreadUg } = wayNow(head);
  return {
    way,
    tareGrams: head.tare_ug === null ? null : gramsText(head.tare_ug),
    tares: [...tares],
    tareSpreadGrams: tareSpreadUg === null ? null : gramsText(tareSpreadUg),
    errorGrams: gramsText(head.scale_error_ug),
  };
};

/** A batch keeps one sample: planned with it, kept by the first run that keeps one. */
function viewSample({ head, siblings }: RunRecords) {
  const kept = siblings.find(({ close }) => (close?.retained_ug ?? 0) > 0);
  const planned = head.planned_sample_ug;
  return {
    plannedSampleGrams: planned === null || kept ? null : gramsText(planned),
    sampleKeptIn: kept?.head.number ?? null,
  };
}

function viewWeight(records: RunRecords, row: SignedWeight, verdict: RunVerdict): RunView['weights'][number] {
  const judged = judgeWeight(records, row, verdict.limits);
  return {
    entryId: row.entry_id,
    number: row.tin,
    way: (row.way ?? wayNow(records.head).way) as RunView['way'],
    grossGrams: gramsText(row.gross_ug),
    tareGrams: gramsText(row.tare_ug),
    netGrams: gramsText(row.gross_ug - row.tare_ug),
    verdict: judged.verdict,
    lightBy: judged.verdict === 'too-light' ? lightBy(row, verdict) : null,
    surelyGrams: toText(judged.surelyGrams),
    errorGrams: toText(errorGramsOf(records, row)),
    gramsToAdd: toText(judged.gramsToAdd),
    isStruck: row.is_struck,
    fate: row.fate as RunView['weights'][number]['fate'],
    refillOf: row.refill_of,
    isRefilled: row.is_refilled,
    sure: row.sure === null ? [] : (JSON.parse(row.sure) as string[]),
    at: row.happened_at,
    by: row.person_name,
  };
}

function lightBy(row: SignedWeight, { limits }: RunVerdict): 'label' | 'limit-1' | 'limit-2' {
  const net = netGramsOf(row);
  if (limits && net.lt(limits.limit2)) return 'limit-2';
  return limits && net.lt(limits.limit1) ? 'limit-1' : 'label';
}

/** A thousandth of a gram is finer than any bench scale that fills tins: for reading only, nothing is judged by it. */
const shown = (value: Exact | null): string | null =>
  value === null ? null : toText(value.toDecimalPlaces(3));

function summarise(records: RunRecords, verdict: RunVerdict): RunView['summary'] {
  const tins = countingTins(records, verdict);
  const counted = judgeRecords(records, tins);
  return {
    filled: verdict.filled,
    tooLight: verdict.tooLight,
    stillToFill: verdict.stillToFill,
    putAside: records.weights.filter(isGone).length,
    bowlHolds: Math.floor(bowlLeftUg(records) / records.head.aim_ug),
    counting: tins.length,
    meanGrams: shown(counted.meanGrams),
    standardDeviationGrams: shown(counted.standardDeviationGrams),
    giveawayGrams: shown(counted.giveawayGrams),
    verdict: verdict.verdict,
    decidedBy: verdict.decidedBy,
    belowNominal: verdict.belowNominal,
    belowLimit1: verdict.belowLimit1,
    belowLimit2: verdict.belowLimit2,
  };
}

function closingOf({ close, bowl, counts }: RunRecords, loss: Loss): RunView['closing'] {
  if (!close) return null;
  return {
    units: close.units,
    retainedGrams: close.retained_ug === null ? null : gramsText(close.retained_ug),
    declinedBecause: close.declined_because,
    lostGrams: gramsText(close.lost_ug),
    leftGrams: gramsText(close.left_ug),
    leftLot:
      close.left_ug > 0 && bowl
        ? { id: bowl.id, number: bowl.number, bestBefore: bowl.best_before ?? bowl.keep_until }
        : null,
    counts: counts.map(viewCount),
    loss,
    at: close.happened_at,
    by: close.person_name,
  };
}

const viewCount = ({ part, issued, used, spoilt, back }: RunCountRow) => ({
  part: part as 'tin' | 'lid' | 'label',
  issued,
  used,
  spoilt,
  back,
  missing: issued === null || back === null ? null : issued - used - spoilt - back,
});
