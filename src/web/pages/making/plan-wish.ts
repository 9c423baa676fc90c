import { readDecimal } from '../../../core/quantity/index.ts';
import type { AnswerOf, BodyOf } from '../../api/shapes.ts';
import { readWhole } from '../../show/read-whole.ts';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { PlanSearch } from './plan-search.ts';

type Formulas = AnswerOf<'listFormulas'>;
type Products = AnswerOf<'listProducts'>;
export type BatchWish = BodyOf<'planBatch'>;

/** The plan as it is being typed. */
export interface PlanWish {
  readonly formulaId: string;
  readonly by: 'tins' | 'grams';
  readonly grams: string;
  /** Typed count for each product of the mixture. */
  readonly units: Readonly<Record<string, string>>;
  readonly keepsSample: boolean;
  readonly sampleGrams: string;
  readonly declineWhy: string;
  /** '': as learnt, else as the product says. */
  readonly lossPercent: string;
  readonly purpose: 'sale' | 'trial';
  /** null: wherever the tins that are asked for are sold, which is every market of the formula where none is. */
  readonly markets: readonly string[] | null;
}

export const productsOf = (products: Products, formulaId: string): Products =>
  products.filter((product) => product.details.formulaId === formulaId && !product.details.isWithdrawn);

/** What the address asks for, else the first mixture that has a product. */
export function firstWish(search: PlanSearch, formulas: Formulas, products: Products): PlanWish {
  const asked = products.find((product) => product.id === search.product);
  const formulaId =
    search.formula ?? asked?.details.formulaId ?? formulas.find((formula) => formula.latest)?.id ?? '';
  return {
    ...wishFor(formulaId, formulas, products),
    ...(search.grams === undefined ? {} : { grams: search.grams }),
    ...(asked && search.units !== undefined ? { units: { [asked.id]: String(search.units) } } : {}),
  };
}

/** A fresh plan for a formula: tins where it is filled into something, grams where it is a base. */
export function wishFor(formulaId: string, formulas: Formulas, products: Products): PlanWish {
  const own = productsOf(products, formulaId);
  const formula = formulas.find((each) => each.id === formulaId);
  const isBase = formula?.kind === 'base';
  const sample = own[0]?.details.retainedGrams ?? '';
  return {
    formulaId,
    by: isBase || own.length === 0 ? 'grams' : 'tins',
    grams: '',
    units: {},
    // A product of which nothing is kept asks for the reason, not for grams above nought.
    keepsSample: sample !== '0',
    sampleGrams: sample === '0' ? '' : sample,
    declineWhy: '',
    lossPercent: '',
    purpose: 'sale',
    markets: null,
  };
}

/** Those that somebody ticked; else those of the products of which tins are asked for. */
export function marketsOf(wish: PlanWish, formulas: Formulas, products: Products): readonly string[] {
  if (wish.markets !== null) return wish.markets;
  const asked = wish.by === 'tins' ? tinsOf(wish).map(({ productId }) => productId) : [];
  const sold = products.filter(({ id }) => asked.includes(id)).flatMap(({ details }) => details.markets);
  const all = formulas.find(({ id }) => id === wish.formulaId)?.soldIn ?? [];
  return sold.length === 0 ? all : [...new Set(sold)];
}

/** What is asked of the workshop once enough is typed; undefined while it is not. */
export function batchWish(wish: PlanWish, formulas: Formulas, products: Products): BatchWish | undefined {
  const markets = marketsOf(wish, formulas, products);
  const formula = formulas.find((each) => each.id === wish.formulaId);
  // A trial tries out what was written last; for sale it is made by what is in force.
  const revisionId = wish.purpose === 'trial' ? formula?.latest?.id : formula?.inForceId;
  const size = sizeOf(wish);
  if (!revisionId || !size || markets.length === 0) return undefined;
  return {
    revisionId,
    purpose: wish.purpose,
    markets: markets as BatchWish['markets'],
    size,
  };
}

/** The same for as much as there is: what the plan found possible. */
export function makeLess(wish: PlanWish, plan: AnswerOf<'planBatch'>): PlanWish {
  if (wish.by === 'grams') return { ...wish, grams: plan.batchGrams };
  const possible = plan.tins.map((tin) => [tin.productId, String(tin.possible)] as const);
  return { ...wish, units: { ...wish.units, ...Object.fromEntries(possible) } };
}

const tinsOf = ({ units }: PlanWish) =>
  Object.entries(units).flatMap(([productId, typed]) => {
    const read = readWhole(typed, 'units');
    return read.ok && read.value > 0 ? [{ productId, units: read.value }] : [];
  });

/** While it is no percentage the plan is as if nothing were set: the field says what is wrong. */
function readLoss(typed: string): string | null {
  const read = readDecimal(typed, 'lossPercent');
  const isPercent = typed.trim() !== '' && read.ok && read.value.gte(0) && read.value.lt(100);
  return isPercent ? typedDecimal(typed) : null;
}

function sizeOf(wish: PlanWish): BatchWish['size'] | undefined {
  if (wish.by === 'grams') {
    const read = readDecimal(wish.grams, 'grams');
    return read.ok && read.value.gt(0) ? { by: 'grams', grams: typedDecimal(wish.grams) } : undefined;
  }
  const tins = tinsOf(wish);
  if (tins.length === 0) return undefined;
  const retained = wish.keepsSample
    ? ({ keep: true, grams: typedDecimal(wish.sampleGrams) } as const)
    : ({ keep: false, reason: wish.declineWhy } as const);
  return { by: 'tins', tins, retained, lossPercent: readLoss(wish.lossPercent) };
}
