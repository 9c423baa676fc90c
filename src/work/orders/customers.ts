import { problem } from '../../core/problem.ts';
import {
  emptyLog,
  eraseOrdersText,
  findCustomer,
  giveUp,
  insertCustomer,
  listCustomers as readCustomers,
  updateCustomer,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';

export const listCustomers: UseCase<'listCustomers'> = async ({ storage }) => ({
  ok: true,
  value: (await readCustomers(storage.db)).map((row) => ({
    id: row.id,
    version: row.version,
    name: row.name,
    address: row.address,
    isErased: row.is_erased === 1,
  })),
});

/** The chain keeps only the customer's number: names and addresses never enter it, so that they can be erased. */
export const saveCustomer: UseCase<'saveCustomer'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const id = body.id ?? context.machine.newId();
      const row = { id, name: body.name, address: body.address, is_erased: 0, version: 1 };
      const current = body.id === undefined ? undefined : await findCustomer(tx, id);
      if (body.id !== undefined && !current) giveUp(thingNotFound('id', id));
      if (current?.is_erased) giveUp(problem('customer-erased', 'id', { found: id }));
      await tell({
        kind: current ? 'customer-changed' : 'customer-added',
        subjectKind: 'customer',
        subjectId: id,
        payload: {},
      });
      if (!current) await insertCustomer(tx, row);
      else if (body.version === undefined || !(await updateCustomer(tx, row, body.version))) {
        giveUp(changedMeanwhile('customer', body.version, current.version, current.name));
      }
      return id;
    },
    viewId,
  );

/** Name, address and whatever else was typed for the customer go from the file and from the log beside it. */
export const eraseCustomer: UseCase<'eraseCustomer'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const current = await findCustomer(tx, params.id ?? '');
      if (!current) giveUp(thingNotFound('id', params.id ?? ''));
      await tell({ kind: 'customer-erased', subjectKind: 'customer', subjectId: current.id, payload: {} });
      await updateCustomer(tx, { ...current, name: '', address: '', is_erased: 1 }, current.version);
      await eraseOrdersText(tx, current.id);
      return current.id;
    },
    async (id) => {
      await emptyLog(context.storage);
      return viewId(id);
    },
  );
