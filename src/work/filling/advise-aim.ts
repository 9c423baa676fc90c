import type { z } from 'zod';
import { netContentsTables } from '../../catalogue/index.ts';
import type { filling } from '../../contract/index.ts';
import { type AimAdvice, adviseAim as findAdvice } from '../../core/filling/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import { type Exact, type ExactInput, exact, readDecimal, toText } from '../../core/quantity/index.ts';
import { findBatch, findMaterial, findProduct, findScale } from '../../storage/index.ts';
import { readProductDetails } from '../read-product-details.ts';
import { thingNotFound } from '../record.ts';
import { findWorstError } from '../scale-error.ts';
import type { UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
import { findBulkPricePerGram } from './costed-lots.ts';
import { type LearntSpread, learnSpread } from './learn-spread.ts';

type View = z.output<typeof filling.aimAdvice>;

/** What to aim at in each tin, from the spread of earlier runs and the errors of scale and tare, and what it gives away. */
export const adviseAim: UseCase<'adviseAim'> = async (context, { params, query }) => {
  const { db } = context.storage;
  const batch = await findBatch(db, params.id ?? '');
  if (!batch) return refused(thingNotFound('id', params.id ?? ''));
  const product = await findProduct(db, query.productId);
  if (!product) return refused(thingNotFound('productId', query.productId));
  const scale = await findScale(db, query.scaleId);
  if (!scale) return refused(thingNotFound('scaleId', query.scaleId));
  const details = readProductDetails(product.details);
  const tin = await findMaterial(db, details.tinId);
  const known = tin && (JSON.parse(tin.details) as { tareGrams: string | null }).tareGrams;
  const given = readOptional(query, ['tareGrams', 'errorGrams', 'allowanceGrams', 'tareSpreadGrams']);
  if (!given.ok) return given;
  const load = exact(details.declaredGrams).plus(given.value.tareGrams ?? known ?? 0);
  const scaleError = findWorstError(scale, load);
  if (!scaleError.ok) return scaleError;
  const errorGrams = given.value.errorGrams ?? exact(scaleError.value).plus(given.value.allowanceGrams ?? 0);
  const learnt = await learnSpread(db, query.productId, details);
  const advice = findAdvice(
    {
      declaredGrams: details.declaredGrams,
      basis: details.fillBasis,
      spreadGrams: learnt?.spread.standardDeviation ?? null,
      tareSpreadGrams: given.value.tareSpreadGrams ?? null,
      errorGrams,
      readabilityGrams: scale.readability_grams,
    },
    netContentsTables,
  );
  if (!advice.ok) return advice;
  const price = batch.lot_id === null ? null : await findBulkPricePerGram(db, batch.lot_id);
  const { currency } = await workshopDetails(context);
  const { wanted } = query;
  return done({
    ...viewAdvice(advice.value, { price, wanted }),
    basis: details.fillBasis,
    errorGrams: toText(errorGrams),
    currency,
    learnt: learnt && viewLearnt(learnt),
    productAimGrams: details.aimGrams,
  });
};

type Texts<Key extends string> = Readonly<Record<Key, string>>;

/** '' is not given. */
function readOptional<Key extends string>(
  texts: Texts<Key>,
  keys: readonly Key[],
): Result<Partial<Record<Key, Exact>>> {
  const found: Partial<Record<Key, Exact>> = {};
  for (const key of keys) {
    if (texts[key] === '') continue;
    const read = readDecimal(texts[key], key);
    if (!read.ok) return read;
    found[key] = read.value;
  }
  return done(found);
}

interface Stake {
  readonly price: Exact | null;
  readonly wanted: number;
}

/** Money to a hundredth of a penny, as the run's cost; grams for reading to a thousandth. */
const money = (grams: Exact, { price }: Stake): string | null =>
  price === null ? null : toText(grams.times(price).toDecimalPlaces(4));
const shown = (grams: ExactInput): string => toText(exact(grams).toDecimalPlaces(3));

/** One tin in so many, in whole tins; rarer than one in ten thousand is as good as none. */
const oneIn = (share: number | null): number | null =>
  share === null || share < 1e-4 ? null : Math.max(1, Math.round(1 / share));

function viewAdvice(advice: AimAdvice, stake: Stake) {
  const { giveawayGrams, lower } = advice;
  const run = giveawayGrams.times(stake.wanted);
  return {
    aimGrams: toText(advice.aimGrams),
    decidedBy: advice.decidedBy,
    giveawayGrams: shown(giveawayGrams),
    giveawayMoney: money(giveawayGrams, stake),
    runGiveawayGrams: shown(run),
    runGiveawayMoney: money(run, stake),
    shortOneIn: oneIn(advice.shortShare),
    lower: lower && viewLower(lower, stake),
  } satisfies Partial<View>;
}

function viewLower(lower: NonNullable<AimAdvice['lower']>, stake: Stake): View['lower'] {
  const saved = lower.byGrams.times(stake.wanted);
  return {
    byGrams: shown(lower.byGrams),
    savesGrams: shown(saved),
    savesMoney: money(saved, stake),
    shortOneIn: oneIn(lower.shortShare),
  };
}

const viewLearnt = ({ spread, from, runs }: LearntSpread): NonNullable<View['learnt']> => ({
  spreadGrams: shown(spread.standardDeviation),
  tins: spread.count,
  from,
  runs: runs.map(({ head, tins }) => ({ id: head.id, number: head.number, tins })),
});
