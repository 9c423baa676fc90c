import type { Selectable } from 'kysely';
import type { MovementTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type MovementRow = Selectable<MovementTable>;

/** The database refuses the whole write where one of them would leave a place with less than nothing. */
export async function insertMovements(db: Reader, rows: readonly MovementRow[]): Promise<void> {
  if (rows.length > 0)
    await db
      .insertInto('movement')
      .values([...rows])
      .execute();
}

export interface SignedMovement extends MovementRow {
  readonly place_name: string;
  readonly happened_at: string;
  readonly recorded_at: string;
  readonly person_name: string;
  readonly batch_number: string | null;
  readonly run_number: string | null;
  readonly order_number: number | null;
}

/** Every movement of a lot with who, when and for what, the newest first. */
export async function listMovementsOfLot(db: Reader, lotId: string): Promise<SignedMovement[]> {
  const rows = await db
    .selectFrom('movement')
    .innerJoin('entry', 'entry.id', 'movement.entry_id')
    .innerJoin('place', 'place.id', 'movement.place_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('batch', 'batch.id', 'movement.batch_id')
    .leftJoin('filling_run', 'filling_run.id', 'movement.filling_run_id')
    .leftJoin('order_line', 'order_line.id', 'movement.order_line_id')
    .leftJoin('customer_order', 'customer_order.id', 'order_line.order_id')
    .selectAll('movement')
    .select(['place.name as place_name', 'entry.happened_at', 'entry.recorded_at'])
    .select(['person.name as person', 'batch.number as batch_number'])
    .select(['filling_run.number as run_number', 'customer_order.number as order_number'])
    .where('movement.lot_id', '=', lotId)
    .orderBy('entry.seq', 'desc')
    .orderBy('movement.quantity')
    .execute();
  return rows.map(({ person, ...row }) => ({ ...row, person_name: person ?? '' }));
}

export interface PlaceSum {
  readonly place_id: string;
  readonly place_name: string;
  readonly place_kind: string;
  readonly quantity: number;
}

/** What stands of a lot at each place, retained samples included. */
export async function sumByPlace(db: Reader, lotId: string): Promise<PlaceSum[]> {
  const rows = await db
    .selectFrom('movement')
    .innerJoin('place', 'place.id', 'movement.place_id')
    .select(['movement.place_id', 'place.name as place_name', 'place.kind as place_kind'])
    .select((query) => query.fn.sum<number>('movement.quantity').as('quantity'))
    .where('movement.lot_id', '=', lotId)
    .groupBy(['movement.place_id', 'place.name', 'place.kind'])
    .execute();
  return rows.map((row) => ({ ...row, quantity: Number(row.quantity) }));
}
