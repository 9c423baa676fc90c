import { type Problem, problem } from '../../core/problem.ts';
import {
  findMaterial,
  giveUp,
  insertGoodsOrdered,
  listGoodsOnTheirWay,
  type MaterialRow,
  type Writer,
} from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';

interface Ordering {
  readonly orderedOn: string;
  readonly supplier: string;
  readonly expectedOn: string | null;
}

/** Goods are ordered: the list of what to buy says so until some come in. Said again, the last word counts. */
export const markOrdered: UseCase<'markOrdered'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const material = await materialOf(tx, params.id ?? '');
      const { orderedOn, supplier, expectedOn } = body;
      const refusal = judgeDays(
        { orderedOn, supplier, expectedOn },
        await workshopToday(inside(context, tx)),
      );
      if (refusal) giveUp(refusal);
      const ordering = { ordered_on: orderedOn, supplier, expected_on: expectedOn };
      await tell({
        kind: 'goods-ordered',
        subjectKind: 'material',
        subjectId: material.id,
        payload: { ...ordering },
      });
      await insertGoodsOrdered(tx, {
        entry_id: body.stamp.id,
        material_id: material.id,
        is_on_its_way: 1,
        ...ordering,
      });
      return material.id;
    },
    viewId,
  );

/** Nothing comes after all, or it came by another way: a word of its own, the first one stays. */
export const unmarkOrdered: UseCase<'unmarkOrdered'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const material = await materialOf(tx, params.id ?? '');
      const before = (await listGoodsOnTheirWay(tx)).get(material.id);
      if (!before) giveUp(problem('nothing-on-its-way', 'material', { found: material.name }));
      await tell({
        kind: 'goods-not-ordered',
        subjectKind: 'material',
        subjectId: material.id,
        payload: { takesBack: before.entry_id },
      });
      await insertGoodsOrdered(tx, {
        entry_id: body.stamp.id,
        material_id: material.id,
        is_on_its_way: 0,
        ordered_on: null,
        supplier: '',
        expected_on: null,
      });
      return material.id;
    },
    viewId,
  );

const materialOf = async (tx: Writer, id: string): Promise<MaterialRow> =>
  (await findMaterial(tx, id)) ?? giveUp(thingNotFound('id', id));

function judgeDays({ orderedOn, expectedOn }: Ordering, today: string): Problem | undefined {
  if (orderedOn > today)
    return problem('ordered-in-future', 'orderedOn', { found: orderedOn, allowed: today });
  return expectedOn !== null && expectedOn < orderedOn
    ? problem('expected-before-ordered', 'expectedOn', { found: expectedOn, allowed: orderedOn })
    : undefined;
}
