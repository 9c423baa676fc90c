import { productFiles } from '../../contract/index.ts';
import { done, problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import { normaliseName } from '../../core/safety/index.ts';
import {
  findPointOfDeparture,
  giveUp,
  insertPointOfDeparture,
  type Reader,
  listPointsOfDeparture as readRows,
  updatePointOfDeparture,
  type Writer,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';

async function readAll(db: Reader) {
  const rows = await readRows(db);
  return rows.map(({ id, version, details }) => ({
    id,
    version,
    details: productFiles.pointOfDeparture.parse(JSON.parse(details)),
  }));
}

/** Those that count. */
export async function readPoints(db: Reader): Promise<productFiles.PointOfDeparture[]> {
  return (await readAll(db)).map(({ details }) => details).filter(({ isTakenOut }) => !isTakenOut);
}

export const listPointsOfDeparture: UseCase<'listPointsOfDeparture'> = async ({ storage: { db } }) =>
  done((await readAll(db)).filter(({ details }) => !details.isTakenOut));

export const savePointOfDeparture: UseCase<'savePointOfDeparture'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const id = body.id ?? context.machine.newId();
      await refuseUnfit(tx, body);
      await tell({
        kind: body.id ? 'point-of-departure-changed' : 'point-of-departure-added',
        subjectKind: 'point-of-departure',
        subjectId: id,
        payload: body.details,
      });
      const row = { id, name: body.details.name, details: JSON.stringify(body.details), version: 1 };
      if (!body.id) await insertPointOfDeparture(tx, row);
      else await change(tx, row, body.version);
      return id;
    },
    viewId,
  );

/** One substance has one: two would leave it open which of them a margin is reckoned from. */
async function refuseUnfit(tx: Writer, { id, details }: RequestOf<'savePointOfDeparture'>['body']) {
  if (exact(details.milligramsPerKgDay).lte(0))
    giveUp(problem('dose-not-positive', 'details.milligramsPerKgDay', { found: details.milligramsPerKgDay }));
  if (details.isTakenOut) return;
  const twin = (await readAll(tx)).find(
    (one) =>
      one.id !== id &&
      !one.details.isTakenOut &&
      normaliseName(one.details.name) === normaliseName(details.name),
  );
  if (twin) giveUp(problem('point-of-departure-twice', 'details.name', { found: twin.details.name }));
}

async function change(
  tx: Writer,
  row: Parameters<typeof updatePointOfDeparture>[1],
  seen: number | undefined,
): Promise<void> {
  const current = await findPointOfDeparture(tx, row.id);
  if (!current) giveUp(thingNotFound('id', row.id));
  if (seen === undefined || !(await updatePointOfDeparture(tx, row, seen)))
    giveUp(changedMeanwhile(row.name, seen, current.version, current.name));
}
