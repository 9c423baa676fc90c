import type { Selectable } from 'kysely';
import type { GoodsOrderedTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type GoodsOrderedRow = Selectable<GoodsOrderedTable>;

export async function insertGoodsOrdered(db: Reader, row: GoodsOrderedRow): Promise<void> {
  await db.insertInto('goods_ordered').values(row).execute();
}

/** The goods that somebody ordered last, by material, and of which none came in since; nobody has to strike them off. */
export async function listGoodsOnTheirWay(db: Reader): Promise<Map<string, GoodsOrderedRow>> {
  const rows = await db
    .selectFrom('goods_ordered')
    .innerJoin('entry', 'entry.id', 'goods_ordered.entry_id')
    .selectAll('goods_ordered')
    .select('entry.seq')
    .orderBy('entry.seq')
    .execute();
  const last = new Map(rows.map((row) => [row.material_id, row]));
  const received = await findLastReceived(db, [...last.keys()]);
  const isOnItsWay = ([materialId, word]: readonly [string, (typeof rows)[number]]) =>
    word.is_on_its_way === 1 && word.seq > (received.get(materialId) ?? 0);
  return new Map([...last].filter(isOnItsWay));
}

/** The entry with which goods of these materials last came in; what is found at the opening count was no delivery. */
async function findLastReceived(db: Reader, materialIds: readonly string[]): Promise<Map<string, number>> {
  if (materialIds.length === 0) return new Map();
  const rows = await db
    .selectFrom('lot')
    .innerJoin('entry', 'entry.id', 'lot.entry_id')
    .select('lot.item_id')
    .select((query) => query.fn.max<number>('entry.seq').as('seq'))
    .where('lot.item_kind', '=', 'material')
    .where('lot.item_id', 'in', materialIds)
    .where('lot.found_at_opening', '=', 0)
    .groupBy('lot.item_id')
    .execute();
  return new Map(rows.map((row) => [row.item_id, Number(row.seq)]));
}
