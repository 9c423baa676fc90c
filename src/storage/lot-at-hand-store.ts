import type { Selectable } from 'kysely';
import type { LotTable, MovementTable } from './schema.ts';
import type { Reader } from './storage.ts';

/** How much of a lot stands at one place, in micrograms or pieces. */
export interface StandingAt {
  readonly place_id: string;
  readonly place_kind: string;
  readonly quantity: number;
}

/** A lot as the bench needs it: may it be used, and how much of it stands where. */
export interface LotAtHand extends Selectable<LotTable> {
  readonly item_name: string;
  /** base or mixture; null for what was bought, and for tins. */
  readonly formula_kind: string | null;
  /** What the batch it comes of was made as; null for what was bought. */
  readonly made_as: string | null;
  /** The revision of that batch. */
  readonly made_by: string | null;
  readonly status: string;
  readonly status_reason: string;
  /** The entry that set its status; that of the lot itself: it stands as it was made or came in. */
  readonly status_entry_id: string | null;
  /** When somebody last said that it is firm; null: nobody has. */
  readonly firm_said_at: string | null;
  /** The day it was at the bench then: it is compared with days, and an instant lies on two of them. */
  readonly firm_said_on: string | null;
  /** Every place but those of retained samples, shelves first, the fullest first. */
  readonly places: readonly StandingAt[];
  readonly on_hand: number;
}

export type LotChoice = { readonly lotIds: readonly string[] } | { readonly itemIds: readonly string[] };

/** Lots by id, or every lot of these items, in four queries however many there are; the first to end first. */
export async function listLotsAtHand(db: Reader, choice: LotChoice): Promise<LotAtHand[]> {
  const lots = await selectLots(db, choice);
  const ids = lots.map((lot) => lot.id);
  if (ids.length === 0) return [];
  const statuses = await readStatuses(db, ids);
  const firm = await readFirmWords(db, ids);
  const places = await readPlaces(db, ids);
  return lots.map((lot) => {
    const standing = places.get(lot.id) ?? [];
    // A trace shows hundreds of lots, and spreading so many fields took ten times as long (measured).
    return Object.assign(lot, {
      status: statuses.get(lot.id)?.status ?? 'quarantine',
      status_reason: statuses.get(lot.id)?.reason ?? '',
      status_entry_id: statuses.get(lot.id)?.entry_id ?? null,
      firm_said_at: firm.get(lot.id)?.happened_at ?? null,
      firm_said_on: firm.get(lot.id)?.said_on ?? null,
      places: standing,
      on_hand: standing.reduce((sum, place) => sum + place.quantity, 0),
    });
  });
}

/** Dates unknown come last: what is known to end is used before what may last (common practice, no source). */
async function selectLots(db: Reader, choice: LotChoice) {
  const chosen = 'lotIds' in choice ? choice.lotIds : choice.itemIds;
  if (chosen.length === 0) return [];
  return db
    .selectFrom('lot')
    .innerJoin('entry', 'entry.id', 'lot.entry_id')
    .leftJoin('material', 'material.id', 'lot.item_id')
    .leftJoin('formula', 'formula.id', 'lot.item_id')
    .leftJoin('product', 'product.id', 'lot.item_id')
    .leftJoin('batch', 'batch.id', 'lot.batch_id')
    .selectAll('lot')
    .select((query) =>
      query.fn
        .coalesce('material.name', 'formula.name', 'product.name', query.val(''))
        .$castTo<string>()
        .as('item_name'),
    )
    .select(['formula.kind as formula_kind', 'batch.purpose as made_as'])
    .select('batch.revision_id as made_by')
    .where('lotIds' in choice ? 'lot.id' : 'lot.item_id', 'in', chosen)
    .orderBy((query) => query.fn.coalesce('lot.best_before', 'lot.keep_until', query.val('9999-12-31')))
    .orderBy('lot.since')
    .orderBy('entry.seq')
    .execute();
}

async function readStatuses(db: Reader, lotIds: readonly string[]) {
  const rows = await db
    .selectFrom('lot_status')
    .innerJoin('entry', 'entry.id', 'lot_status.entry_id')
    .select(['lot_status.lot_id', 'lot_status.entry_id', 'lot_status.status', 'lot_status.reason'])
    .where('lot_status.lot_id', 'in', lotIds)
    .orderBy('entry.seq')
    .execute();
  return new Map(rows.map((row) => [row.lot_id, row]));
}

async function readFirmWords(db: Reader, lotIds: readonly string[]) {
  const rows = await db
    .selectFrom('firm_word')
    .innerJoin('entry', 'entry.id', 'firm_word.entry_id')
    .select(['firm_word.lot_id', 'firm_word.said_on', 'entry.happened_at'])
    .where('firm_word.lot_id', 'in', lotIds)
    .orderBy('entry.seq')
    .execute();
  return new Map(rows.map((row) => [row.lot_id, row]));
}

/** Summed before the places are looked up: one look-up for a sum, not one for each movement. */
async function readPlaces(db: Reader, lotIds: readonly string[]): Promise<Map<string, StandingAt[]>> {
  const rows = await db
    .selectFrom(
      db
        .selectFrom('movement')
        .select(['lot_id', 'place_id'])
        .select((query) => query.fn.sum<number>('quantity').as('quantity'))
        .where('lot_id', 'in', lotIds)
        .groupBy(['lot_id', 'place_id'])
        .as('standing'),
    )
    .innerJoin('place', 'place.id', 'standing.place_id')
    .select(['standing.lot_id', 'standing.place_id', 'standing.quantity', 'place.kind as place_kind'])
    .where('place.kind', '!=', 'retained')
    .execute();
  const shelfFirst = (kind: string) => (kind === 'shelf' ? 0 : 1);
  const places = new Map<string, StandingAt[]>();
  for (const { lot_id, ...row } of rows) {
    const known = places.get(lot_id) ?? [];
    known.push({ ...row, quantity: Number(row.quantity) });
    places.set(lot_id, known);
  }
  for (const standing of places.values()) {
    standing.sort(
      (one, other) =>
        shelfFirst(one.place_kind) - shelfFirst(other.place_kind) || other.quantity - one.quantity,
    );
  }
  return places;
}

/** A lot as a trace names it: of hundreds, nothing is read that is not shown. */
export interface ReachedLotRow {
  readonly id: string;
  readonly number: string;
  readonly item_kind: string;
  readonly item_name: string;
  readonly unit: string;
  readonly received: number;
  readonly status: string;
  readonly on_hand: number;
}

export async function listReachedLots(db: Reader, lotIds: readonly string[]): Promise<ReachedLotRow[]> {
  if (lotIds.length === 0) return [];
  const lots = await db
    .selectFrom('lot')
    .leftJoin('material', 'material.id', 'lot.item_id')
    .leftJoin('formula', 'formula.id', 'lot.item_id')
    .leftJoin('product', 'product.id', 'lot.item_id')
    .select(['lot.id', 'lot.number', 'lot.item_kind', 'lot.unit', 'lot.received'])
    .select((query) =>
      query.fn
        .coalesce('material.name', 'formula.name', 'product.name', query.val(''))
        .$castTo<string>()
        .as('item_name'),
    )
    .where('lot.id', 'in', lotIds)
    .execute();
  const statuses = await readStatuses(db, lotIds);
  const onHand = await sumOnHand(db, lotIds);
  return lots.map((lot) =>
    Object.assign(lot, {
      status: statuses.get(lot.id)?.status ?? 'quarantine',
      on_hand: onHand.get(lot.id) ?? 0,
    }),
  );
}

/** On every place but those of retained samples: these are few, and looked up once. */
async function sumOnHand(db: Reader, lotIds: readonly string[]): Promise<Map<string, number>> {
  const retained = db.selectFrom('place').select('id').where('kind', '=', 'retained');
  const rows = await db
    .selectFrom('movement')
    .select('lot_id')
    .select((query) => query.fn.sum<number>('quantity').as('quantity'))
    .where('lot_id', 'in', lotIds)
    .where('place_id', 'not in', retained)
    .groupBy('lot_id')
    .execute();
  return new Map(rows.map((row) => [row.lot_id, Number(row.quantity)]));
}

/** What stands of every lot that a batch made, retained samples left out: one query, for lists. */
export async function sumMadeOnHand(db: Reader): Promise<Map<string, number>> {
  const rows = await db
    .selectFrom('batch_close')
    .innerJoin('movement', 'movement.lot_id', 'batch_close.lot_id')
    .innerJoin('place', 'place.id', 'movement.place_id')
    .select('movement.lot_id')
    .select((query) => query.fn.sum<number>('movement.quantity').as('quantity'))
    .where('place.kind', '!=', 'retained')
    .groupBy('movement.lot_id')
    .execute();
  return new Map(rows.map((row) => [row.lot_id, Number(row.quantity)]));
}

/** What one entry moved. */
export const listMovementsOfEntry = (db: Reader, entryId: string): Promise<Selectable<MovementTable>[]> =>
  db.selectFrom('movement').selectAll().where('entry_id', '=', entryId).execute();

/** A lot that may not be used as it stands. */
export interface NotReleasedLot {
  readonly id: string;
  readonly number: string;
  readonly item_name: string;
  readonly status_reason: string;
}

/** Every lot whose newest status is any but released: few, since what is used up stays released. */
export async function listLotsNotReleased(db: Reader): Promise<NotReleasedLot[]> {
  const newest = db
    .selectFrom('lot_status')
    .innerJoin('entry', 'entry.id', 'lot_status.entry_id')
    .select('lot_status.lot_id')
    .select((query) => query.fn.max('entry.seq').as('seq'))
    .groupBy('lot_status.lot_id')
    .as('newest');
  return db
    .selectFrom(newest)
    .innerJoin('entry', 'entry.seq', 'newest.seq')
    .innerJoin('lot_status', (join) =>
      join.onRef('lot_status.entry_id', '=', 'entry.id').onRef('lot_status.lot_id', '=', 'newest.lot_id'),
    )
    .innerJoin('lot', 'lot.id', 'newest.lot_id')
    .leftJoin('material', 'material.id', 'lot.item_id')
    .leftJoin('formula', 'formula.id', 'lot.item_id')
    .leftJoin('product', 'product.id', 'lot.item_id')
    .select(['lot.id', 'lot.number', 'lot_status.reason as status_reason'])
    .select((query) =>
      query.fn
        .coalesce('material.name', 'formula.name', 'product.name', query.val(''))
        .$castTo<string>()
        .as('item_name'),
    )
    .where('lot_status.status', '!=', 'released')
    .orderBy('entry.seq')
    .execute();
}
