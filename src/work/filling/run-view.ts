import type { RunVerdict } from '../../core/filling/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import { type Exact, toText } from '../../core/quantity/index.ts';
import type { SignedWeight } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { gramsText } from '../quantity-text.ts';
import { thingNotFound } from '../record.ts';
import { viewClaimsOf } from '../view-claim.ts';
import { findRunBestBefore } from './best-before.ts';
import { countingTins, judgeRecords, judgeWeight, netGramsOf } from './judge-records.ts';
import { checkRelease, readChecks } from './release-checks.ts';
import { gatherRun, netUgOf, type RunRecords } from './run-records.ts';
import { sayRun } from './run-sentence.ts';
import type { Check, RunView } from './run-shapes.ts';

export async function viewRun(context: Context, id: string): Promise<Result<RunView>> {
  const records = await gatherRun(context.storage.db, id);
  if (!records) return refused(thingNotFound('id', id));
  const waits = stateOf(records) === 'closed';
  const checks = waits ? await checkRelease(context, records) : [];
  const view = await viewRecords(context, records, checks);
  return done({ ...view, claims: await viewClaimsOf(context.storage.db, 'filling-run', id) });
}

/** `checks`: of a run that waits for its release, worked out for whoever looks at it alone; later they are as signed. */
export async function viewRecords(
  context: Context,
  records: RunRecords,
  checks: readonly Check[] = [],
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
    tareGrams: head.tare_ug === null ? null : gramsText(head.tare_ug),
    scale: {
      id: head.scale_id,
      name: records.scale?.name ?? '',
      readabilityGrams: records.scale?.readability_grams ?? '',
      worstErrorGrams: gramsText(head.scale_error_ug),
    },
    plannedSampleGrams: head.planned_sample_ug === null ? null : gramsText(head.planned_sample_ug),
    labelsPrinted: records.labelsPrinted,
    bulkOnHandGrams: gramsText(records.bowl?.on_hand ?? 0),
    weights: records.weights.map((row) => viewWeight(records, row, verdict)),
    summary,
    sentence: sayRun(state, records, summary, checks),
    closing: closingOf(records),
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

export function stateOf({ close, release }: RunRecords): RunView['state'] {
  if (release) return release.verdict as 'released' | 'rejected';
  return close ? 'closed' : 'filling';
}

function viewWeight(records: RunRecords, row: SignedWeight, verdict: RunVerdict): RunView['weights'][number] {
  const judged = judgeWeight(records, row, verdict.limits);
  return {
    entryId: row.entry_id,
    number: row.number,
    grossGrams: gramsText(row.gross_ug),
    tareGrams: gramsText(row.tare_ug),
    netGrams: gramsText(row.gross_ug - row.tare_ug),
    verdict: judged.verdict,
    lightBy: judged.verdict === 'too-light' ? lightBy(row, verdict) : null,
    surelyGrams: toText(judged.surelyGrams),
    isStruck: row.is_struck,
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
    bowlHolds: bowlHolds(records),
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

/** What is in tins is not booked before a run is closed, so it is taken off here: this run's and its neighbours'. */
function bowlHolds(records: RunRecords): number {
  const mine = records.close ? 0 : netUgOf(records.weights);
  const left = (records.bowl?.on_hand ?? 0) - records.elsewhereUg - mine;
  return Math.max(0, Math.floor(left / records.head.aim_ug));
}

function closingOf({ close }: RunRecords): RunView['closing'] {
  if (!close) return null;
  return {
    units: close.units,
    retainedGrams: close.retained_ug === null ? null : gramsText(close.retained_ug),
    declinedBecause: close.declined_because,
    lostGrams: gramsText(close.lost_ug),
    leftGrams: gramsText(close.left_ug),
    at: close.happened_at,
    by: close.person_name,
  };
}
