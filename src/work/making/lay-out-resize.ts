import type { Market, making, Saying } from '../../contract/index.ts';
import { digestOf } from '../../core/digest/index.ts';
import { type ResizedLine, resizeBatch } from '../../core/making/index.ts';
import { done, type Problem, problem, type Result, refused } from '../../core/problem.ts';
import { type Exact, exact, gramsFromMicrograms, largest, sumOf, toText } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  listAdditions,
  listBatchLines,
  listLotsAtHand,
  listScales,
  type NamedBatchLine,
  type ScaleRow,
  type SignedAddition,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { judgeForSale, type SaleCheck } from '../formulas/index.ts';
import { gramsText } from '../quantity-text.ts';
import { saying } from '../saying.ts';
import { isHeld } from '../scale-error.ts';
import { checkAsMade } from './check-as-made.ts';
import { findMadeLookup } from './made-lookup.ts';
import { tellResizeRoom } from './resize-room.ts';
import { type ResizedTin, resizeTins } from './resize-tins.ts';
import { type LaidWeighing, layWeighings } from './weigh-plan.ts';
import { weighState } from './weigh-state.ts';
import type { WeighingNote } from './weighing-note.ts';

export interface ResizeWish {
  readonly position: number;
  /** What is about to be entered there, besides what is in. */
  readonly moreUg: number;
}

/** One line of a batch that is to be made larger or smaller. */
export interface LineThen {
  readonly line: NamedBatchLine;
  readonly inUg: number;
  readonly exact: Exact;
  readonly targetUg: number;
  readonly lowUg: number;
  readonly highUg: number;
  /** What is to be weighed there then. */
  readonly leftUg: number;
  readonly state: making.ResizeOffer['lines'][number]['state'];
  /** The scale and the note of what is still to weigh; null where nothing is. */
  readonly weighing: LaidWeighing | null;
}

export interface LaidResize {
  readonly position: number;
  readonly wasUg: number;
  readonly isUg: number;
  readonly lines: readonly LineThen[];
  readonly tins: readonly ResizedTin[];
  readonly room: making.ResizeOffer['room'];
  readonly hindrances: readonly Saying[];
  readonly upon: string;
}

/** What it takes to make a batch as large as what is in of one line, by what is there now; reads only. */
export async function layOutResize(
  context: Context,
  head: BatchHead,
  wish: ResizeWish,
): Promise<Result<LaidResize>> {
  const { db } = context.storage;
  const lines = await listBatchLines(db, head.id);
  const additions = await listAdditions(db, head.id);
  const own = lines.find(({ position }) => position === wish.position);
  if (!own) return refused(problem('thing-not-found', 'position', { found: String(wish.position) }));
  const inOf = (line: NamedBatchLine) => inUgOf(line, additions, wish);
  const resized = resizeBatch(
    lines.map((line) => ({
      key: String(line.position),
      group: `${line.stage} ${line.item_id}`,
      exactGrams: line.exact_grams,
      inGrams: gramsFromMicrograms(inOf(line)),
      isDone: weighState(line, additions).isDone,
    })),
    String(wish.position),
  );
  if (!resized.ok) return refused(...nameLines(resized.problems, lines));
  const checked = await checkAsMade(
    context,
    head.revision_id,
    JSON.parse(head.markets) as Market[],
    await findMadeLookup(db, head.id),
  );
  if (!checked.ok) return checked;
  const scales = (await listScales(db)).filter((scale) => !isHeld(scale));
  const parts = { sale: judgeForSale(checked.value), scales, inOf, own };
  const laid = await layLines(context, lines, resized.value.lines, parts);
  if (!laid.ok) return laid;
  const isUg = laid.value.reduce((sum, each) => sum + each.targetUg, 0);
  const tins = await resizeTins(context, head, { wasUg: head.planned_ug, isUg });
  const room = await tellResizeRoom(context, head, laid.value, tins);
  const facts = { position: wish.position, wasUg: head.planned_ug, isUg, lines: laid.value, tins: tins.tins };
  return done({
    ...facts,
    room,
    hindrances: hindrancesOf(laid.value, room),
    upon: digestOf([
      wish.position,
      head.planned_ug,
      laid.value.map(({ line, inUg, targetUg }) => [line.position, inUg, targetUg]),
    ]),
  });
}

/** A line is told by its name, not by its place. */
const nameLines = (problems: readonly Problem[], lines: readonly NamedBatchLine[]): Problem[] =>
  problems.map((each) => ({
    ...each,
    where: lines.find(({ position }) => String(position) === each.where)?.item_name ?? each.where,
  }));

const inUgOf = (
  line: NamedBatchLine,
  additions: readonly SignedAddition[],
  { position, moreUg }: ResizeWish,
): number => weighState(line, additions).inUg + (line.position === position ? moreUg : 0);

interface LayParts {
  readonly sale: SaleCheck;
  readonly scales: readonly ScaleRow[];
  readonly inOf: (line: NamedBatchLine) => number;
  readonly own: NamedBatchLine;
}

/**
 * Bands are those of the whole line, targets those of what is still to weigh: laid out as the plan does, so that a limited
 * substance is never rounded up and the scale can show what it is asked for.
 */
async function layLines(
  context: Context,
  lines: readonly NamedBatchLine[],
  resized: readonly ResizedLine[],
  { sale, scales, inOf, own }: LayParts,
): Promise<Result<LineThen[]>> {
  const lots = await listLotsAtHand(context.storage.db, {
    lotIds: [...new Set(lines.map((line) => line.lot_id))],
  });
  const thenOf = (line: NamedBatchLine) => resized.find(({ key }) => key === String(line.position));
  const wantedOf = (line: NamedBatchLine, grams: Exact) => ({
    grams,
    // Whether the lot has it is told apart, and another may give the rest.
    lot: lots.find((lot) => lot.id === line.lot_id && gramsFromMicrograms(lot.on_hand).gte(grams)) ?? null,
    isDelicate: (JSON.parse(line.weighing) as WeighingNote).tolerancePercent !== '2',
    headroom: sale.headroom.get(line.item_id) ?? null,
    footroom: sale.footroom.get(line.item_id) ?? null,
  });
  // Another lot gave all of it: there is nothing to lay out.
  const needed = lines.filter((line) => thenOf(line)?.exactGrams.gt(0));
  const whole = layWeighings(
    needed.map((line) => ({ ...wantedOf(line, thenOf(line)?.exactGrams ?? exact(0)), lot: null })),
    scales,
  );
  if (!whole.ok) return whole;
  const toWeigh = needed.filter((line, index) => {
    const low = whole.value[index]?.lowUg ?? 0;
    return line !== own && inOf(line) < low && thenOf(line)?.leftGrams.gt(0);
  });
  const rest = layWeighings(
    toWeigh.map((line) => wantedOf(line, thenOf(line)?.leftGrams ?? exact(0))),
    scales,
  );
  if (!rest.ok) return rest;
  return done(
    lines.flatMap((line) => {
      const then = thenOf(line);
      if (then?.exactGrams.isZero()) return [lineOver(line, then)];
      const all = whole.value[needed.indexOf(line)];
      const left = rest.value[toWeigh.indexOf(line)];
      return then && all ? [lineThen(line, inOf(line), { then, all, left, isOwn: line === own })] : [];
    }),
  );
}

interface ThenParts {
  readonly then: ResizedLine;
  readonly all: LaidWeighing;
  readonly left: LaidWeighing | undefined;
  readonly isOwn: boolean;
}

const lineOver = (line: NamedBatchLine, then: ResizedLine): LineThen => ({
  ...{ line, exact: then.exactGrams, inUg: 0, targetUg: 0, lowUg: 0, highUg: 0, leftUg: 0 },
  state: 'enough',
  weighing: null,
});

function lineThen(line: NamedBatchLine, inUg: number, { then, all, left, isOwn }: ThenParts): LineThen {
  const leftUg = left?.targetUg ?? 0;
  const targetUg = isOwn ? inUg : left ? inUg + leftUg : all.targetUg;
  // What was never weighed keeps the band of its own lot; else the band is that of the whole line.
  const band = left && inUg === 0 ? left : all;
  return {
    line,
    inUg,
    exact: then.exactGrams,
    targetUg,
    lowUg: Math.min(band.lowUg, targetUg),
    highUg: Math.max(band.highUg, targetUg),
    leftUg,
    state: left ? (inUg === 0 ? 'open' : 'more') : inUg > all.highUg && !isOwn ? 'over' : 'enough',
    weighing: left ?? null,
  };
}

function hindrancesOf(lines: readonly LineThen[], room: LaidResize['room']): Saying[] {
  const over = lines
    .filter(({ state }) => state === 'over')
    .map(({ line, inUg, exact: then }) =>
      saying('resize-over', {
        item: line.item_name,
        inGrams: gramsText(inUg),
        isGrams: toText(then.toDecimalPlaces(3)),
      }),
    );
  return [...over, ...room.filter(({ isThere }) => !isThere).map(({ says }) => says)];
}

/** What the batch holds then: for the bowl. */
export const sumThen = (lines: readonly LineThen[]): Exact =>
  sumOf(lines.map(({ inUg, targetUg }) => largest(gramsFromMicrograms(inUg), gramsFromMicrograms(targetUg))));
