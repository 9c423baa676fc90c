import type { z } from 'zod';
import { netContentsTables } from '../../catalogue/index.ts';
import type { filling, orders, stock } from '../../contract/index.ts';
import {
  adviseAim,
  askAboutTares,
  askAboutTin,
  findTareSpread,
  type TareSpread,
} from '../../core/filling/index.ts';
import { problem } from '../../core/problem.ts';
import { exact, gramsFromMicrograms, microgramsFromGrams, toText } from '../../core/quantity/index.ts';
import {
  type FillWayRow,
  findMaterial,
  giveUp,
  orGiveUp,
  type RunHead,
  type ScaleRow,
  type Writer,
} from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';
import { findWorstErrorUg } from '../scale-error.ts';
import { learnSpread } from './learn-spread.ts';

export type FillWay = z.output<typeof filling.fillWay>;

/** How somebody wants to weigh: the way, and what is taken off. */
export interface WayWish {
  /** null: as the tare tells. */
  readonly way: FillWay | null;
  readonly tareGrams: string | null;
  readonly tares: readonly string[];
  readonly aimGrams: string | null;
  /** Questions about the empty tins that were said yes to. */
  readonly sure: readonly string[];
}

export type MeasuredWay = Omit<FillWayRow, 'entry_id' | 'filling_run_id'>;

interface Filled {
  readonly productId: string;
  readonly details: orders.ProductDetails;
  readonly scale: ScaleRow;
}

/**
 * What is taken off each tin, the worst error of a net weight by this way, and what to aim at. The spread of tins whose
 * mean is taken off counts into the error: a heavier tin holds less than it seems to.
 */
export async function measureWay(tx: Writer, filled: Filled, wish: WayWish): Promise<MeasuredWay> {
  const { details, scale } = filled;
  const asked = askAboutTares(wish.tares);
  if (asked !== null && !wish.sure.includes(asked.code)) giveUp(asked);
  const knownUg = await knownTareUg(tx, details);
  refuseLowAim(details, wish.aimGrams);
  askTypedTare(wish, knownUg);
  const spread = wish.tares.length > 1 ? orGiveUp(findTareSpread(wish.tares)) : null;
  const tareUg = findTareUg(wish, spread, knownUg);
  const way = wish.way ?? wayOfTare(tareUg);
  const loadTareUg = way === 'own' ? (knownUg ?? null) : tareUg;
  refuseOverload(scale, details, loadTareUg ?? 0);
  const scaleErrorUg = orGiveUp(findWorstErrorUg(scale, loadOf(scale, details, loadTareUg)));
  const isMean = way === 'mean' && spread !== null;
  const errorUg = scaleErrorUg + (isMean ? allowanceUgOf(spread) : 0);
  const spreadUg = isMean ? microgramsOf(spread.standardDeviationGrams.toFixed()) : null;
  return {
    way,
    tare_ug: way === 'own' ? null : tareUg,
    tares: JSON.stringify(isMean ? wish.tares : []),
    tare_spread_ug: spreadUg,
    error_ug: errorUg,
    aim_ug: await findAimUg(tx, filled, wish, { errorUg, spreadUg }),
  };
}

/** One weight for all tins that is unlike what the tin is known to weigh would be taken off every one of them. */
function askTypedTare({ tareGrams, tares, sure }: WayWish, knownUg: number | null): void {
  if (tareGrams === null || tares.length > 1 || knownUg === null || exact(tareGrams).isZero()) return;
  const asked = askAboutTin(tareGrams, gramsText(knownUg));
  if (asked !== null && !sure.includes(asked.code)) giveUp(asked);
}

/** By the average way tins may lie below their label, and what is aimed at may not. */
function refuseLowAim({ declaredGrams }: orders.ProductDetails, aimGrams: string | null): void {
  if (aimGrams !== null && exact(aimGrams).lt(declaredGrams))
    giveUp(problem('aim-below-label', 'aimGrams', { found: aimGrams, allowed: declaredGrams }));
}

/** A tare of nought means that the scale was set to nought with the tin on it. */
const wayOfTare = (tareUg: number | null): FillWay => {
  if (tareUg === null) return 'own';
  return tareUg === 0 ? 'net' : 'mean';
};

function findTareUg(wish: WayWish, spread: TareSpread | null, knownUg: number | null): number | null {
  if (wish.way === 'net') return 0;
  if (spread !== null) return microgramsOf(spread.meanGrams.toFixed());
  const given = wish.tareGrams ?? wish.tares[0] ?? null;
  const tareUg = given === null ? knownUg : orGiveUp(microgramsFromGrams(given, 'tareGrams'));
  // Nought would be a tared scale, which is another way.
  if (wish.way === 'mean' && (tareUg === null || tareUg === 0)) giveUp(problem('tare-missing', 'tareGrams'));
  return tareUg;
}

const allowanceUgOf = (spread: TareSpread): number =>
  exact(spread.allowanceGrams).times(1_000_000).ceil().toNumber();

/** A mean has more places than the ledger counts; rounded to its whole micrograms. */
const microgramsOf = (grams: string): number => exact(grams).times(1_000_000).toDecimalPlaces(0).toNumber();

/** As the material of the tin says; null: nobody has weighed one. */
export async function knownTareUg(tx: Writer, details: orders.ProductDetails): Promise<number | null> {
  const tin = await findMaterial(tx, details.tinId);
  const tare = tin && (JSON.parse(tin.details) as stock.MaterialDetails).tareGrams;
  return tare == null ? null : orGiveUp(microgramsFromGrams(tare, 'tareGrams'));
}

/** As asked for, else as the product says, else as the spread of earlier runs and the errors ask. */
async function findAimUg(
  tx: Writer,
  { productId, details, scale }: Filled,
  wish: WayWish,
  { errorUg, spreadUg }: { readonly errorUg: number; readonly spreadUg: number | null },
): Promise<number> {
  const given = wish.aimGrams ?? details.aimGrams;
  if (given !== null) return orGiveUp(microgramsFromGrams(given, 'aimGrams'));
  const learnt = await learnSpread(tx, productId, details);
  const advice = adviseAim(
    {
      declaredGrams: details.declaredGrams,
      basis: details.fillBasis,
      spreadGrams: learnt?.spread.standardDeviation ?? null,
      tareSpreadGrams: spreadUg === null ? null : gramsFromMicrograms(spreadUg),
      errorGrams: gramsFromMicrograms(errorUg),
      readabilityGrams: scale.readability_grams,
    },
    netContentsTables,
  );
  return orGiveUp(microgramsFromGrams(toText(orGiveUp(advice).aimGrams), 'aimGrams'));
}

/**
 * What stands on the scale when a tin is weighed. Where nobody knows yet what the tin weighs, the largest load that the
 * scale carries: an error is never made smaller than it is. A tare of nought means that the scale was set to nought
 * with the tin on it, and errors of a net value then go by the net load (OIML R 76-1, 3.5.3.3, from memory).
 */
const loadOf = (scale: ScaleRow, details: orders.ProductDetails, tareUg: number | null) =>
  tareUg === null ? exact(scale.capacity_grams) : exact(details.declaredGrams).plus(gramsText(tareUg));

function refuseOverload(scale: ScaleRow, details: orders.ProductDetails, tareUg: number): void {
  const load = loadOf(scale, details, tareUg);
  if (load.gt(scale.capacity_grams)) {
    giveUp(
      problem('scale-too-small', 'scaleId', {
        found: load.toFixed(),
        allowed: scale.capacity_grams,
        parameters: { scale: scale.name },
      }),
    );
  }
}

/** How tins of a run are weighed by now; from before there were several ways, as its tare tells. */
export interface WayNow {
  readonly way: FillWay;
  readonly tares: readonly string[];
  readonly tareSpreadUg: number | null;
  /** Of the scale alone. */
  readonly scaleErrorUg: number;
}

export function wayNow(head: RunHead): WayNow {
  if (head.way === null)
    return {
      way: wayOfTare(head.tare_ug),
      tares: [],
      tareSpreadUg: null,
      scaleErrorUg: head.scale_error_ug,
    };
  const tares = JSON.parse(head.way.tares) as string[];
  const spread = tares.length > 1 ? orGiveUp(findTareSpread(tares)) : null;
  return {
    way: head.way.way as FillWay,
    tares,
    tareSpreadUg: head.way.tare_spread_ug,
    scaleErrorUg: head.way.error_ug - (spread === null ? 0 : allowanceUgOf(spread)),
  };
}
