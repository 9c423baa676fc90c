import { createHash } from 'node:crypto';
import { must } from '../../src/core/problem.ts';
import {
  openStorage,
  type Storage,
  type Writer,
  type WriteStory,
  writeOnce,
} from '../../src/storage/index.ts';

export const AT = '2026-11-02T08:00:00.000Z';

const story = (kind: string, subjectId: string): WriteStory => ({
  kind,
  subjectKind: 'lot',
  subjectId,
  payload: { kind },
});

/** A file with little in it, written straight through the storage: one lot, two movements, an attachment. */
export async function makeSmallFile(file: string): Promise<Storage> {
  const storage = must(await openStorage(file));
  await receiveLot(storage, 'l1', 500_000_000, insertFirstThings);
  await attach(storage, 'a1');
  return storage;
}

async function insertFirstThings(tx: Writer): Promise<void> {
  await tx.insertInto('person').values({ id: 'p1', name: 'Ada Quill', is_active: 1, version: 1 }).execute();
  await tx.insertInto('place').values({ id: 'shelf', name: 'Shelf', kind: 'shelf' }).execute();
  await tx
    .insertInto('customer')
    .values({ id: 'c1', name: '=cmd()', address: 'a "quoted", one\nin two lines', is_erased: 0, version: 1 })
    .execute();
}

export async function receiveLot(
  storage: Storage,
  id: string,
  micrograms: number,
  insertBefore: (tx: Writer) => Promise<void> = async () => undefined,
): Promise<void> {
  const stamp = { id: `received-${id}`, at: AT, by: 'p1', device: 'test', asked: { text: id, salt: null } };
  must(
    await writeOnce(storage, stamp, AT, async (tx, tell) => {
      await tell(story('lot-received', id));
      await insertBefore(tx);
      await tx
        .insertInto('lot')
        .values({
          id,
          entry_id: stamp.id,
          number: `L-${id}`,
          item_kind: 'material',
          item_id: 'm1',
          unit: 'g',
          since: '2026-11-02',
          found_at_opening: 0,
          supplier: '',
          supplier_lot: null,
          best_before: null,
          keep_until: null,
          firm_from: null,
          firm_to: null,
          paid: null,
          received: micrograms,
          batch_id: null,
          filling_run_id: null,
          version: 1,
        })
        .execute();
      for (const [place, quantity] of [
        ['a', micrograms],
        ['b', -1000],
      ] as const) {
        await tx
          .insertInto('movement')
          .values({
            id: `${id}-${place}`,
            entry_id: stamp.id,
            lot_id: id,
            place_id: 'shelf',
            kind: quantity > 0 ? 'received' : 'gift',
            quantity,
            reason: '',
            batch_id: null,
            filling_run_id: null,
            order_line_id: null,
            dispatch_id: null,
          })
          .execute();
      }
    }),
  );
}

async function attach(storage: Storage, id: string): Promise<void> {
  const bytes = Buffer.from([0, 255, 37, 80, 68, 70]);
  const stamp = { id: `attached-${id}`, at: AT, by: 'p1', device: 'test', asked: { text: id, salt: null } };
  must(
    await writeOnce(storage, stamp, AT, async (tx, tell) => {
      await tell(story('file-attached', id));
      await tx
        .insertInto('attachment')
        .values({
          id,
          entry_id: stamp.id,
          name: 'report.pdf',
          sha256: createHash('sha256').update(bytes).digest('hex'),
          bytes,
        })
        .execute();
    }),
  );
}

export const countEntries = (storage: Storage): number =>
  (storage.handle.prepare('select count(*) as n from entry').get() as { n: number }).n;
