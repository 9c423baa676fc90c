import { problem } from '../../core/problem.ts';
import {
  findFormula,
  findMaterial,
  findProduct,
  giveUp,
  insertProduct,
  listLotsAtHand,
  listReleases,
  updateProduct,
  type Writer,
} from '../../storage/index.ts';
import { clearedMarkets } from '../filling/cleared-markets.ts';
import { readProductDetails } from '../read-product-details.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';

type Details = RequestOf<'saveProduct'>['body']['details'];

export const saveProduct: UseCase<'saveProduct'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const id = body.id ?? context.machine.newId();
      await refuseUnfit(tx, body.details);
      await tell({
        kind: body.id ? 'product-changed' : 'product-added',
        subjectKind: 'product',
        subjectId: id,
        payload: body.details,
      });
      const row = {
        id,
        formula_id: body.details.formulaId,
        name: body.details.name,
        details: JSON.stringify(body.details),
        version: 1,
      };
      if (!body.id) await insertProduct(tx, row);
      else await changeProduct(tx, row, body.version);
      return id;
    },
    viewId,
  );

async function changeProduct(
  tx: Writer,
  row: Parameters<typeof updateProduct>[1],
  seen: number | undefined,
): Promise<void> {
  const current = await findProduct(tx, row.id);
  if (!current) giveUp(thingNotFound('id', row.id));
  await refuseUncleared(tx, row, readProductDetails(row.details));
  if (seen === undefined || !(await updateProduct(tx, row, seen))) {
    giveUp(changedMeanwhile(row.name, seen, current.version, current.name));
  }
}

/** An order knows no market: released tins are sent wherever their product is sold, so they have to be checked for it. */
async function refuseUncleared(
  tx: Writer,
  { id, name }: { readonly id: string; readonly name: string },
  { markets }: Details,
): Promise<void> {
  const lots = await listLotsAtHand(tx, { itemIds: [id] });
  const standing = lots.filter((lot) => lot.on_hand > 0 && lot.status === 'released');
  const releases = await listReleases(
    tx,
    standing.flatMap((lot) => lot.filling_run_id ?? []),
  );
  const missing = releases.flatMap((release) => {
    const cleared = clearedMarkets(release);
    const lacks = markets.filter((market) => !cleared.includes(market));
    const lot = standing.find((each) => each.filling_run_id === release.filling_run_id);
    return lacks.length === 0 ? [] : [{ lacks, number: lot?.number ?? '' }];
  });
  if (missing.length === 0) return;
  const runs = missing.map((row) => row.number).join(', ');
  const lacked = [...new Set(missing.flatMap((row) => row.lacks))].join(', ');
  giveUp(
    problem('tins-not-cleared', 'details.markets', { found: name, parameters: { runs, markets: lacked } }),
  );
}

/** Formula and packaging must exist, and be what they are used as. */
async function refuseUnfit(tx: Writer, details: Details): Promise<void> {
  const formula = await findFormula(tx, details.formulaId);
  if (!formula) giveUp(thingNotFound('details.formulaId', details.formulaId));
  if (formula.kind === 'base')
    giveUp(problem('product-of-a-base', 'details.formulaId', { found: formula.name }));
  for (const [field, id] of [
    ['tinId', details.tinId],
    ['lidId', details.lidId],
    ['labelId', details.labelId],
  ] as const) {
    const material = id === null ? null : await findMaterial(tx, id);
    if (material === undefined) giveUp(thingNotFound(`details.${field}`, id ?? ''));
    if (material && material.kind !== 'packaging')
      giveUp(problem('not-packaging', `details.${field}`, { found: material.name }));
  }
}
