import type { z } from 'zod';
import type { making, Saying } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { toText } from '../../core/quantity/index.ts';
import { gramsText } from '../quantity-text.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { type LaidBatch, type LaidRow, layOutBatch } from './lay-out-batch.ts';

type Plan = z.output<typeof making.batchPlan>;

/** Sizes a batch and lays out its weighing sheet as of now; writes nothing. */
export const planBatch: UseCase<'planBatch'> = async (context, { body }) => {
  const laid = await layOutBatch(context, body, context.machine.now());
  return laid.ok ? done(viewPlan(laid.value, body.purpose === 'sale')) : laid;
};

/** What may not be made for sale is no tin that can be made, whatever is there for it. */
const viewPlan = (laid: LaidBatch, isForSale: boolean): Plan => ({
  revisionId: laid.recipe.revisionId,
  formulaName: laid.recipe.formula.name,
  batchGrams: toText(laid.size.batchGrams),
  sizing: [...laid.size.sizing],
  limitedBy: isBarred(laid, isForSale) ? sayBarred(laid) : sayLimit(laid),
  tins: laid.size.units.map(({ productId, wanted, possible }) => ({
    productId,
    productName: laid.tins.find((tin) => tin.productId === productId)?.name ?? '',
    wanted,
    possible: isBarred(laid, isForSale) ? 0 : possible,
  })),
  rows: laid.rows.map(viewRow),
  weighing: laid.weighing,
  short: [...laid.short],
  hindrances: [...laid.hindrances],
});

const isBarred = ({ sale }: LaidBatch, isForSale: boolean): boolean =>
  isForSale && sale.hindrances.length > 0;

const sayBarred = ({ recipe: { formula, number } }: LaidBatch): Saying =>
  saying('limited-by-check', { formula: formula.name, number });

function sayLimit({ size }: LaidBatch): Saying {
  const name = size.limitedBy.name ?? '';
  switch (size.limitedBy.kind) {
    case 'order':
      return saying('limited-by-nothing');
    case 'bowl':
      return saying('limited-by-bowl');
    case 'material':
      return saying('limited-by-material', { name });
    case 'base':
      return saying('limited-by-base', { name });
    default:
      return saying('limited-by-packaging', { name });
  }
}

const viewRow = (row: LaidRow, position: number): Plan['rows'][number] => ({
  position,
  stage: row.stage,
  itemKind: row.itemKind,
  itemId: row.itemId,
  itemName: row.itemName,
  percent: row.percent,
  lotId: row.lot?.id ?? null,
  lotNumber: row.lot?.number ?? null,
  lotNote: row.lotNote,
  exactGrams: row.exactGrams,
  targetGrams: gramsText(row.targetUg),
  lowGrams: gramsText(row.lowUg),
  highGrams: gramsText(row.highUg),
  scaleId: row.scale?.id ?? null,
  scaleName: row.scale?.name ?? null,
  relativeError: row.relativeError,
  smallestWeightGrams: row.smallestWeightGrams,
  warning: row.warning,
  caution: row.caution,
});
