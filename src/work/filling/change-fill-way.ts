import { findScale, giveUp, insertFillWay } from '../../storage/index.ts';
import { readProductDetails } from '../read-product-details.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { measureWay } from './measure-way.ts';
import { openRun } from './open-run.ts';
import { viewRun } from './run-view.ts';
import { tellWay } from './tell-way.ts';

/** From now on tins are weighed in another way; each weight keeps how it was weighed, and is judged by that. */
export const changeFillWay: UseCase<'changeFillWay'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const run = await openRun(tx, params.id ?? '', body.stamp);
      const scale = (await findScale(tx, run.scale_id)) ?? giveUp(thingNotFound('scaleId', run.scale_id));
      const filled = { productId: run.product_id, details: readProductDetails(run.product_details), scale };
      const way = await measureWay(tx, filled, body);
      await tell({
        kind: 'fill-way-changed',
        subjectKind: 'filling-run',
        subjectId: run.id,
        payload: tellWay(way),
      });
      await insertFillWay(tx, { entry_id: body.stamp.id, filling_run_id: run.id, ...way });
      return run.id;
    },
    (id) => viewRun(context, id),
  );
