import { type Problem, problem } from '../../core/problem.ts';
import { giveUp, type LotAtHand, updateLotFacts } from '../../storage/index.ts';
import { changedMeanwhile, record, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { lotToChange } from './lot-on-bench.ts';

type Body = RequestOf<'correctLot'>['body'];

/** Changes what was written about a lot; the entry keeps both sides and the reason, so the first stays readable. */
export const correctLot: UseCase<'correctLot'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const lot = await lotToChange(tx, params.id ?? '');
      const problems = whyNotCorrectable(lot, body);
      if (problems.length > 0) giveUp(...problems);
      const before = { supplierLot: lot.supplier_lot, bestBefore: lot.best_before, paid: lot.paid };
      const after = { supplierLot: body.supplierLot, bestBefore: body.bestBefore, paid: body.paid };
      await tell({
        kind: 'lot-corrected',
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: { before, after, reason: body.reason },
      });
      const row = {
        id: lot.id,
        supplier_lot: body.supplierLot,
        best_before: body.bestBefore,
        paid: body.paid,
      };
      if (!(await updateLotFacts(tx, row, body.version)))
        giveUp(changedMeanwhile(`lot ${lot.number}`, body.version, lot.version, holdsOf(lot)));
      return lot.id;
    },
    viewId,
  );

const holdsOf = (lot: LotAtHand): string =>
  [lot.supplier_lot, lot.best_before, lot.paid].filter((fact) => fact !== null).join(', ');

/** What is made here was not bought; and the date on filled tins is printed already. */
function whyNotCorrectable(lot: LotAtHand, body: Body): Problem[] {
  if (lot.item_kind === 'material') return [];
  const bought = (['supplierLot', 'paid'] as const).filter((field) => body[field] !== null);
  const isPrinted = lot.item_kind === 'product' && body.bestBefore !== lot.best_before;
  return [
    ...bought.map((field) =>
      problem('lot-not-bought', field, { found: body[field], parameters: { lot: lot.number } }),
    ),
    ...(isPrinted
      ? [problem('date-printed', 'bestBefore', { found: body.bestBefore, allowed: lot.best_before })]
      : []),
  ];
}
