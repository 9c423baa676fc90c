import type { z } from 'zod';
import type { making } from '../../contract/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import {
  type BatchHead,
  findBatch,
  findWithoutRecipe,
  listAdditions,
  listBatchLines,
  listBatchSteps,
  listBatchTins,
  listDeviations,
  listLinkedAttachments,
  listLotsAtHand,
  listResizes,
  listRunStates,
  listScales,
  listSpills,
  listStepRecords,
  listStepsBegun,
  listStrikesOfBatch,
  listStruckPhotos,
  listWhipRounds,
  type RunState,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { gramsText } from '../quantity-text.ts';
import { thingNotFound } from '../record.ts';
import { viewClaimsOf } from '../view-claim.ts';
import { buildScreens } from './batch-screens.ts';
import { findAir } from './find-air.ts';
import { findBase } from './find-base.ts';
import { findYields } from './find-yields.ts';
import { judgeWeighed } from './judge-weighed.ts';
import { judgeWorstCase } from './judge-worst-case.ts';
import { placeOfDeviation } from './place-of-deviation.ts';
import { viewStruck, viewStruckPhotos } from './struck-entries.ts';
import { tellShares } from './tell-shares.ts';
import { viewResizes, viewSpills } from './view-mishaps.ts';

export type BatchView = z.output<typeof making.batchView>;
export type BatchSummary = z.output<typeof making.batchSummary>;

/** One batch, screen by screen, in a dozen small queries: it is built after every weighing. */
export async function viewBatch(context: Context, id: string): Promise<Result<BatchView>> {
  const { db } = context.storage;
  const head = await findBatch(db, id);
  if (!head) return refused(thingNotFound('id', id));
  const lines = await listBatchLines(db, id);
  const additions = await listAdditions(db, id);
  const stepRecords = await listStepRecords(db, id);
  const steps = await listBatchSteps(db, id);
  const begun = await listStepsBegun(db, id);
  const rounds = await listWhipRounds(db, [id]);
  const photos = await listLinkedAttachments(db, 'step', id);
  const struckPhotos = await listStruckPhotos(db, id);
  const whipped = steps.some((step) => step.kind === 'cup' || step.kind === 'whip')
    ? await findAir(context, head, additions)
    : { tins: [], air: null };
  const resizes = await listResizes(db, id);
  const screens = buildScreens({
    ...{ lines, additions, steps, stepRecords, begun, rounds, photos },
    ...whipped,
    base: await findBase(db, head),
    scales: await listScales(db),
    resizes,
  });
  const strikes = await listStrikesOfBatch(db, id);
  const spills = await listSpills(db, id);
  const tins = await listBatchTins(db, id);
  const deviations = await listDeviations(db, id);
  const [lot] = head.lot_id === null ? [] : await listLotsAtHand(db, { lotIds: [head.lot_id] });
  const inputUg = additions.reduce((sum, row) => (row.is_struck ? sum : sum + row.actual_ug), 0);
  const standing = await judgeStanding(context, head, screens);
  const runs = await listRunStates(db, [id]);
  return done({
    ...summarise(head, {
      onHandUg: lot?.on_hand ?? null,
      runs,
      total: screens.length,
      done: screens.filter((screen) => screen.done !== null).length,
    }),
    revisionId: head.revision_id,
    markets: JSON.parse(head.markets) as BatchView['markets'],
    by: head.started_by,
    tins: tins.map((row) => ({
      productId: row.product_id,
      productName: row.product_name,
      units: row.units,
    })),
    retained: {
      grams: head.retained_ug === null ? null : gramsText(head.retained_ug),
      declinedBecause: head.declined_because,
    },
    screens: standing.screens,
    struck: [
      ...viewStruck({ screens, additions, stepRecords, begun, rounds, strikes, resizes, spills }),
      ...viewStruckPhotos(struckPhotos, screens),
    ],
    asWeighed: standing.asWeighed,
    worstCase: await judgeWorstCase(context, head),
    deviations: deviations.map((row) => ({
      entryId: row.entry_id,
      screen: row.screen,
      ...placeOfDeviation(screens, additions, row),
      what: row.what,
      why: row.why,
      at: row.happened_at,
      by: row.person_name,
    })),
    yields: await findYields(db, head, screens, runs),
    isWithoutRecipe: (await findWithoutRecipe(db, id)) !== undefined,
    resizes: viewResizes(head, resizes, lines),
    spills: viewSpills(spills, screens),
    outcome: outcomeOf(head, inputUg),
    claims: await viewClaimsOf(db, 'batch', id),
  });
}

/**
 * Bands bound grams and limits bind shares: a base at the lower end of its band and a scent at the upper end of its own
 * may be over together. So every batch that is being weighed is looked at, and the finished one too, since limits and
 * reports change.
 */
async function judgeStanding(
  context: Context,
  head: BatchHead,
  screens: BatchView['screens'],
): Promise<Pick<BatchView, 'asWeighed' | 'screens'>> {
  const asPlanned = { asWeighed: null, screens };
  if (head.outcome === 'abandoned') return asPlanned;
  const isBegun = screens.some((screen) => screen.kind === 'addition' && screen.entries.length > 0);
  if (head.outcome === null && !isBegun) return asPlanned;
  const markets = JSON.parse(head.markets) as BatchView['markets'];
  const batch = { batchId: head.id, revisionId: head.revision_id, markets };
  return {
    asWeighed: await judgeWeighed(context, batch),
    screens: head.outcome === null ? await tellShares(context, batch, screens) : screens,
  };
}

/** What was given up has no yield: all that went in is lost. */
function outcomeOf(head: BatchHead, inputUg: number): BatchView['outcome'] {
  if (head.outcome === null || head.closed_at === null) return null;
  const yieldUg = head.yield_ug ?? 0;
  return {
    yieldGrams: gramsText(yieldUg),
    inputGrams: gramsText(inputUg),
    lossGrams: gramsText(inputUg - yieldUg),
    at: head.closed_at,
    by: head.closed_by ?? '',
  };
}

export interface SummaryParts {
  readonly total: number;
  readonly done: number;
  readonly onHandUg: number | null;
  readonly runs: readonly RunState[];
}

export const summarise = (head: BatchHead, parts: SummaryParts): BatchSummary => ({
  id: head.id,
  number: head.number,
  formulaId: head.formula_id,
  formulaName: head.formula_name,
  formulaKind: head.formula_kind as BatchSummary['formulaKind'],
  revisionNumber: head.revision_number,
  purpose: head.purpose as BatchSummary['purpose'],
  state: (head.outcome ?? 'making') as BatchSummary['state'],
  startedAt: head.started_at,
  plannedGrams: gramsText(head.planned_ug),
  screensDone: parts.done,
  screensTotal: parts.total,
  lotId: head.lot_id,
  lotOnHand: parts.onHandUg === null ? null : gramsText(parts.onHandUg),
  runs: parts.runs.map((run) => ({
    id: run.id,
    number: run.number,
    productName: (JSON.parse(run.product_details) as { name: string }).name,
    state: runStateOf(run),
  })),
});

export function runStateOf(run: {
  readonly is_closed: boolean;
  readonly verdict: string | null;
}): BatchSummary['runs'][number]['state'] {
  if (run.verdict === 'released' || run.verdict === 'rejected') return run.verdict;
  return run.is_closed ? 'closed' : 'filling';
}
