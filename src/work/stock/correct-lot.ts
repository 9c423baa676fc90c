import { type Problem, problem } from '../../core/problem.ts';
import { giveUp, insertMovements, type LotAtHand, orGiveUp, updateLotFacts } from '../../storage/index.ts';
import { amountText } from '../quantity-text.ts';
import { changedMeanwhile, record, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { correctReceipt } from './correct-receipt.ts';
import { listOutlasting } from './list-outlasting.ts';
import { lotToChange } from './lot-on-bench.ts';
import { readQuantity, type Unit } from './read-quantity.ts';

type Body = RequestOf<'correctLot'>['body'];

/**
 * Changes what was written about a lot; the entry keeps both sides and the reason, so the first stays readable. Where the
 * quantity of the receipt was wrong, the difference is booked as received. Where it ends sooner than was thought, so does
 * what was made of it.
 */
export const correctLot: UseCase<'correctLot'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const lot = await lotToChange(tx, params.id ?? '');
      const problems = whyNotCorrectable(lot, body);
      if (problems.length > 0) giveUp(...problems);
      const received = receivedBy(lot, body);
      const movements = await correctReceipt(context, tx, lot, { received, ...body });
      const { supplierLot, bestBefore, paid } = body;
      const before = { ...factsOf(lot), quantity: amountText(lot.received, lot.unit) };
      const after = { supplierLot, bestBefore, paid, quantity: amountText(received, lot.unit) };
      const outlasting = await listOutlasting(tx, lot, bestBefore);
      const shortened = outlasting.map(({ id, best_before }) => ({ lotId: id, before: best_before }));
      await tell({
        kind: 'lot-corrected',
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: { before, after, reason: body.reason, shortened },
      });
      const row = {
        id: lot.id,
        supplier_lot: body.supplierLot,
        best_before: body.bestBefore,
        paid: body.paid,
        received,
      };
      if (!(await updateLotFacts(tx, row, body.version)))
        giveUp(changedMeanwhile(`lot ${lot.number}`, body.version, lot.version, holdsOf(lot)));
      for (const made of outlasting)
        await updateLotFacts(tx, { ...factRowOf(made), best_before: bestBefore }, made.version);
      await insertMovements(tx, movements);
      return lot.id;
    },
    viewId,
  );

const factRowOf = ({ id, supplier_lot, best_before, paid, received }: LotAtHand) => ({
  id,
  supplier_lot,
  best_before,
  paid,
  received,
});

const factsOf = (lot: LotAtHand) => ({
  supplierLot: lot.supplier_lot,
  bestBefore: lot.best_before,
  paid: lot.paid,
});

const receivedBy = (lot: LotAtHand, { quantity }: Body): number =>
  quantity === undefined ? lot.received : orGiveUp(readQuantity(quantity, lot.unit as Unit));

const holdsOf = (lot: LotAtHand): string =>
  [lot.supplier_lot, lot.best_before, lot.paid].filter((fact) => fact !== null).join(', ');

/** What is made here was not bought; and the date on filled tins is printed already. */
function whyNotCorrectable(lot: LotAtHand, body: Body): Problem[] {
  if (lot.item_kind === 'material') return [];
  const fields = { supplierLot: body.supplierLot, paid: body.paid, quantity: body.quantity ?? null };
  const bought = Object.entries(fields).filter(([, found]) => found !== null);
  const isPrinted = lot.item_kind === 'product' && body.bestBefore !== lot.best_before;
  return [
    ...bought.map(([field, found]) =>
      problem('lot-not-bought', field, { found, parameters: { lot: lot.number } }),
    ),
    ...(isPrinted
      ? [problem('date-printed', 'bestBefore', { found: body.bestBefore, allowed: lot.best_before })]
      : []),
  ];
}
