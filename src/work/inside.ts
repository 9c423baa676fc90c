import type { Writer } from '../storage/index.ts';
import type { Context } from './context.ts';

/**
 * The same context, reading inside the open transaction. The file has one connection: a read beside the transaction
 * would wait for it for ever.
 */
export const inside = (context: Context, tx: Writer): Context => ({
  ...context,
  storage: { ...context.storage, db: tx },
});
