import type { Reader } from './storage.ts';

/** What an order's entries tell; only those that enter or change one name the customer and its note. */
interface Told {
  readonly customerId?: string | null;
  readonly dispatchId?: string;
  readonly noteChanged?: boolean;
}

interface OrderEntry {
  readonly id: string;
  readonly told: Told;
}

/** Whose the words of one order are. null: nobody was named. */
interface Course {
  customer: string | null;
  noteOf: string | null;
  readonly trackingOf: Map<string, string | null>;
  /** Each entry with those for whom it may have been typed: a move carries over what stood there. */
  readonly typedFor: Map<string, readonly (string | null)[]>;
}

/**
 * Whatever else a customer's orders hold in words: notes, reasons, tracking numbers, and the salts without which nobody
 * can tell from the chain what was typed. An order that went over to somebody else is cleared of what was typed while
 * it was this customer's; what came afterwards is the other's.
 */
export async function eraseOrdersText(db: Reader, customerId: string): Promise<void> {
  const courses = [...(await readCourses(db))].filter(([, { typedFor }]) =>
    [...typedFor.values()].some((each) => each.includes(customerId)),
  );
  const isOwn = ({ customer }: Course): boolean => customer === customerId;
  const entries = courses.flatMap(([, course]) =>
    [...course.typedFor].flatMap(([id, each]) => (isOwn(course) || mayBeOf(customerId, each) ? [id] : [])),
  );
  const parcels = courses.flatMap(([, course]) =>
    [...course.trackingOf].flatMap(([id, of]) => (isOwn(course) || of === customerId ? [id] : [])),
  );
  const own = courses.flatMap(([id, course]) => (isOwn(course) ? [id] : []));
  const moved = courses.flatMap(([id, it]) => (!isOwn(it) && it.noteOf === customerId ? [id] : []));
  await eraseSalts(db, customerId, entries);
  await db.deleteFrom('dispatch_tracking').where('dispatch_id', 'in', parcels).execute();
  await emptyOrders(db, own, { note: '', cancelled_because: '' });
  await emptyOrders(db, moved, { note: '' });
}

/** What was typed before anybody was named was typed for whoever came to be. */
const mayBeOf = (customerId: string, typedFor: readonly (string | null)[]): boolean =>
  typedFor.includes(customerId) || typedFor.every((each) => each === null);

async function readCourses(db: Reader): Promise<Map<string, Course>> {
  const rows = await db
    .selectFrom('entry')
    .select(['id', 'subject_id', 'payload'])
    .where('subject_kind', '=', 'order')
    .orderBy('seq')
    .execute();
  const courses = new Map<string, Course>();
  for (const { id, subject_id, payload } of rows)
    courses.set(subject_id, follow(courses.get(subject_id), { id, told: JSON.parse(payload) as Told }));
  return courses;
}

const begin = (): Course => ({ customer: null, noteOf: null, trackingOf: new Map(), typedFor: new Map() });

function follow(course: Course = begin(), { id, told }: OrderEntry): Course {
  const before = course.typedFor.size === 0 ? [] : [course.customer];
  if (told.customerId !== undefined) course.customer = told.customerId;
  course.typedFor.set(id, [...before, course.customer]);
  if (told.noteChanged === true || course.noteOf === null) course.noteOf = course.customer;
  if (told.dispatchId !== undefined) course.trackingOf.set(told.dispatchId, course.customer);
  return course;
}

async function eraseSalts(db: Reader, customerId: string, entryIds: readonly string[]): Promise<void> {
  const ofCustomer = db
    .selectFrom('entry')
    .select('id')
    .where('subject_kind', '=', 'customer')
    .where('subject_id', '=', customerId);
  await db.deleteFrom('request_salt').where('entry_id', 'in', ofCustomer).execute();
  await db.deleteFrom('request_salt').where('entry_id', 'in', entryIds).execute();
}

async function emptyOrders(
  db: Reader,
  ids: readonly string[],
  words: { readonly note: ''; readonly cancelled_because?: '' },
): Promise<void> {
  await db
    .updateTable('customer_order')
    .set((order) => ({ ...words, version: order('version', '+', 1) }))
    .where('id', 'in', ids)
    .returningAll()
    .execute();
}
