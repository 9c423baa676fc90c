import type { workshop } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { findFilledTables, listPeople, listPlaces, readWorkshop } from '../../storage/index.ts';
import type { UseCase } from '../use-case.ts';
import { readWorkshopDetails } from '../workshop-details.ts';

/** The order that works: nothing in the list needs what comes after it. */
export const getFirstSteps: UseCase<'getFirstSteps'> = async ({ storage: { db } }) => {
  const filled = await findFilledTables(db);
  const steps: readonly (readonly [workshop.FirstStep, boolean])[] = [
    ['people', (await listPeople(db)).length > 0],
    ['place', (await listPlaces(db)).some(({ kind }) => kind !== 'retained')],
    ['scale', filled.has('scale')],
    ['address', hasAddress(await readWorkshop(db))],
    ['material', filled.has('material')],
    ['count', filled.has('lot')],
    ['formula', filled.has('revision')],
    ['report', filled.has('report')],
    ['product', filled.has('product')],
    ['order', filled.has('customer_order')],
  ];
  return done(steps.map(([step, isDone]) => ({ step, isDone })));
};

/** One responsible person with an address: which one a label needs depends on where it is sold. */
function hasAddress(row: { readonly details: string } | undefined): boolean {
  if (row === undefined) return false;
  const { responsibleGb, responsibleEu, responsibleUs } = readWorkshopDetails(row.details);
  return [responsibleGb, responsibleEu, responsibleUs].some(
    ({ name, address }) => name !== '' && address !== '',
  );
}
