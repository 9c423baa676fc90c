import { problem } from '../../core/problem.ts';
import { judgeEffect } from '../../core/product-file/index.ts';
import { findProduct, findRun, giveUp, insertComplaint, type Writer } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { record, thingNotFound } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { findCustomerNamed } from './refuse-names.ts';
import { viewComplaint } from './view-complaint.ts';

type Body = RequestOf<'enterComplaint'>['body'];

export const enterComplaint: UseCase<'enterComplaint'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      await refuseUnfit(tx, body, await workshopToday(inside(context, tx)));
      const { stamp, ...rest } = body;
      const id = context.machine.newId();
      await tell({ kind: 'complaint-entered', subjectKind: 'complaint', subjectId: id, payload: rest });
      await insertComplaint(tx, {
        id,
        entry_id: stamp.id,
        product_id: rest.productId,
        filling_run_id: rest.runId,
        received_on: rest.receivedOn,
        details: JSON.stringify(rest.details),
      });
      return id;
    },
    (id) => viewComplaint(context, id),
  );

async function refuseUnfit(tx: Writer, body: Body, today: string): Promise<void> {
  const { productId, runId, receivedOn, details } = body;
  if (!(await findProduct(tx, productId))) giveUp(thingNotFound('productId', productId));
  const run = runId === null ? null : await findRun(tx, runId);
  if (run === undefined) giveUp(thingNotFound('runId', runId ?? ''));
  if (run && run.product_id !== productId)
    giveUp(problem('run-of-another-product', 'runId', { found: run.number }));
  if (receivedOn > today)
    giveUp(problem('received-in-future', 'receivedOn', { found: receivedOn, allowed: today }));
  const problems = [
    ...judgeEffect({ ...details, isLookedInto: false }).map(inDetails),
    ...(await findCustomerNamed(tx, details.said)),
  ];
  if (problems.length > 0) giveUp(...problems);
}

const inDetails = <Found extends { readonly where: string }>(found: Found): Found => ({
  ...found,
  where: `details.${found.where}`,
});
