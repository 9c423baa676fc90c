import { done, problem, type Result, refused } from '../../../core/problem.ts';
import type { WriteOf } from '../../api/shapes.ts';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';

export interface ReceiveDraft {
  readonly materialId: string | null;
  readonly quantity: string;
  readonly supplier: string;
  readonly supplierLot: string;
  readonly bestBefore: string;
  readonly paid: string;
  readonly placeId: string;
  readonly reason: string;
}

export const emptyGoods = (materialId: string | null): ReceiveDraft => ({
  materialId,
  quantity: '',
  supplier: '',
  supplierLot: '',
  bestBefore: '',
  paid: '',
  placeId: '',
  reason: '',
});

export const textOrNull = (typed: string): string | null => (typed.trim() === '' ? null : typed.trim());

/** Goods as the contract wants them. Holding needs its reason, so that it is known what is to be looked at. */
export function readReceiveDraft(
  draft: ReceiveDraft,
  accept: boolean,
): Result<WriteOf<'receiveGoods'>['body']> {
  const problems = [
    ...(draft.materialId === null ? [problem('choice-missing', 'materialId')] : []),
    ...(draft.quantity.trim() === '' ? [problem('number-missing', 'quantity')] : []),
    ...(!accept && draft.reason.trim() === '' ? [problem('text-missing', 'reason')] : []),
  ];
  if (problems.length > 0 || draft.materialId === null) return refused(...problems);
  return done({
    materialId: draft.materialId,
    ...(draft.placeId === '' ? {} : { placeId: draft.placeId }),
    supplierLot: textOrNull(draft.supplierLot),
    bestBefore: textOrNull(draft.bestBefore),
    quantity: typedDecimal(draft.quantity),
    paid: typedDecimalOrNull(draft.paid),
    supplier: draft.supplier,
    accept,
    reason: draft.reason,
  });
}
