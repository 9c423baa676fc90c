import type { Context } from './context.ts';
import { inside } from './inside.ts';

/** Everything that one page shows is of one moment: no write comes between its queries. Nothing in it may write. */
export const readAtOnce = <T>(context: Context, read: (within: Context) => Promise<T>): Promise<T> =>
  context.storage.db.transaction().execute((tx) => read(inside(context, tx)));
